package pressweek.solver.timing;

import java.util.Arrays;

/** How presses and molds stand while a pass goes on. */
final class PressStates {
  /** What is in a press; a mold of -1 is none. */
  final int[] mold;

  final int[] tooling;
  final int[] material;
  final boolean[] cleared;
  final int[] free;
  final int[] position;

  /** End of the last run of a press, or the start of the plan. */
  final int[] lastEnd;

  /** End of the run of a job; -1 while it is not settled, {@link Spans#FAR} when left out. */
  final int[] jobEnd;

  /** The option in which a job runs, once it has begun. */
  final int[] jobOption;

  /** When a mold's last run ends, or when it has been taken off. */
  final int[] moldFree;

  /** The press that holds a mold, or -1. */
  final int[] moldOn;

  /** As {@link Sequences#behind}, of the sequences that are carried out; may be empty. */
  int[] behind = new int[0];

  private final WeekTables week;

  PressStates(WeekTables week) {
    this.week = week;
    mold = new int[week.presses];
    tooling = new int[week.presses];
    material = new int[week.presses];
    cleared = new boolean[week.presses];
    free = new int[week.presses];
    position = new int[week.presses];
    lastEnd = new int[week.presses];
    jobEnd = new int[week.jobCount()];
    jobOption = new int[week.jobCount()];
    moldFree = new int[week.names.molds().size()];
    moldOn = new int[moldFree.length];
  }

  /** Whether a job keeps its time on a press. */
  boolean keepsTime(int job, int press) {
    return behind.length > 0 && behind[job] == job && week.jobs.earlierPress[job] == press;
  }

  void name(Snapshot.Changing all) {
    all.add(mold, tooling, material, free, position, lastEnd, jobEnd, jobOption, moldFree, moldOn);
    all.add(cleared);
  }

  void reset() {
    Arrays.fill(moldFree, 0);
    Arrays.fill(moldOn, -1);
    Arrays.fill(position, 0);
    Arrays.fill(lastEnd, week.start);
    Arrays.fill(jobEnd, -1);
    for (int job : week.nowhere) {
      jobEnd[job] = Spans.FAR;
    }
    for (int p = 0; p < week.presses; p++) {
      mold[p] = week.standing[p];
      tooling[p] = week.standingTooling[p];
      material[p] = week.standingMaterial[p];
      cleared[p] = week.standingCleared[p];
      free[p] = week.start;
      if (week.standing[p] >= 0) {
        moldOn[week.standing[p]] = p;
        moldFree[week.standing[p]] = week.start;
      }
    }
  }
}
