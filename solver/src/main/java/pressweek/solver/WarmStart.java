package pressweek.solver;

import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.WeekTables;

/**
 * Takes the order of an earlier plan as a start; jobs that it does not have keep their place in
 * another start.
 */
final class WarmStart {
  private WarmStart() {}

  static Sequences from(WeekTables week, Plan plan, Sequences otherwise) {
    boolean[] placed = new boolean[week.jobCount()];
    Sequences out = new Sequences(week.pressCount(), week.jobCount());
    week.choices(plan.head().plantWide(), out);
    for (int p = 0; p < week.pressCount(); p++) {
      for (int job : week.fixedOn(p)) {
        out.add(p, job);
        placed[job] = true;
      }
    }
    for (Run run : plan.runs()) {
      int job = week.job(run.job());
      int press = week.pressOrNone(run.press());
      if (job >= 0 && press >= 0 && !placed[job] && week.canRun(job, press)) {
        out.add(press, job);
        placed[job] = true;
      }
    }
    for (int p = 0; p < week.pressCount(); p++) {
      for (int job : otherwise.of(p)) {
        if (!placed[job]) {
          out.add(p, job);
        }
      }
    }
    return out;
  }
}
