package pressweek.solver.timing;

import java.util.Arrays;
import pressweek.data.plan.Cause;

/**
 * Presses that wait until a job of another press has begun: since their next job builds on it, or
 * since it is held back behind it on purpose.
 */
final class Waits {
  private final WeekTables week;
  private final PressStates states;

  /** The job that a press waits for, or -1. */
  private final int[] waitsFor;

  private final boolean[] onPurpose;

  /** The next job of a press that waits no longer, or -1. */
  private final int[] released;

  private int[] behind = new int[0];

  /** How many presses wait; an array of one, so that a snapshot may keep it. */
  private final int[] waiting = new int[1];

  Waits(WeekTables week, PressStates states) {
    this.week = week;
    this.states = states;
    waitsFor = new int[week.presses];
    onPurpose = new boolean[week.presses];
    released = new int[week.presses];
  }

  /** Begins anew with jobs that are held back behind others; none of them when it is empty. */
  void begin(int[] heldBehind) {
    holdBack(heldBehind);
    waiting[0] = 0;
    Arrays.fill(waitsFor, -1);
    Arrays.fill(released, -1);
  }

  void name(Snapshot.Changing all) {
    all.add(waitsFor, onPurpose, released, waiting);
  }

  /** Jobs that are held back, in a pass that goes on from a snapshot. */
  void holdBack(int[] heldBehind) {
    behind = heldBehind;
    states.behind = heldBehind;
  }

  boolean any() {
    return waiting[0] > 0;
  }

  /** The job that a job builds on when that is not settled yet, or -1. */
  int link(int job) {
    int first = week.jobs.buildsOn[job];
    return first >= 0 && states.jobEnd[first] < 0 ? first : -1;
  }

  /** Whether a press must wait before its next job; it does from now on. */
  boolean mustWait(int press, int job) {
    int blocker = link(job);
    boolean choice = false;
    if (blocker < 0
        && behind.length > 0
        && behind[job] >= 0
        && behind[job] != job
        && released[press] != job) {
      int other = behind[job];
      choice = states.jobEnd[other] < 0 && week.promised[job] < 0;
      blocker = choice ? other : -1;
    }
    if (blocker < 0) {
      return false;
    }
    waitsFor[press] = blocker;
    onPurpose[press] = choice;
    waiting[0]++;
    return true;
  }

  /** A press that waited for a job, and no longer does; -1 for none. */
  int next(int job) {
    for (int p = 0; p < waitsFor.length; p++) {
      if (waitsFor[p] == job) {
        waitsFor[p] = -1;
        waiting[0]--;
        return p;
      }
    }
    return -1;
  }

  /** Why a press last waited. */
  Cause cause(int press) {
    return onPurpose[press] ? Cause.CHOICE : Cause.LINKED;
  }

  /**
   * A press that need not wait any longer since nothing else goes on: one that waits on purpose
   * before all others, then the one that became free first.
   */
  int giveUp() {
    int best = -1;
    for (int p = 0; p < waitsFor.length; p++) {
      if (waitsFor[p] >= 0 && (best < 0 || isBefore(p, best))) {
        best = p;
      }
    }
    waitsFor[best] = -1;
    waiting[0]--;
    return best;
  }

  private boolean isBefore(int p, int q) {
    if (onPurpose[p] != onPurpose[q]) {
      return onPurpose[p];
    }
    return states.free[p] < states.free[q];
  }

  /** The next job of a press waits on purpose no longer. */
  void release(int press, int job) {
    released[press] = job;
  }
}
