package pressweek.solver;

import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.Touched;
import pressweek.solver.timing.WeekTables;

/**
 * Takes out of sequences what does nothing for them: jobs held back for nothing, and jobs that find
 * no place standing before others. What is left can be read off the plan.
 */
final class Tidying {
  private final WeekTables week;
  private final TimingPass pass;

  Tidying(WeekTables week) {
    this.week = week;
    pass = TimingPass.full(week);
  }

  /** Tidy sequences that cost no more. */
  Sequences tidy(Sequences from) {
    Sequences tidy = from.copy();
    long cost = pass.keep(tidy);
    Touched touched = new Touched();
    for (int p = 0; p < week.pressCount(); p++) {
      for (int i = 0; i < tidy.size(p); i++) {
        int job = tidy.job(p, i);
        int behind = tidy.behind(job);
        if (behind >= 0) {
          touched.clear();
          touched.add(p, i, i + 1);
          tidy.holdBehind(job, -1);
          if (pass.attempt(tidy, cost, touched, false) > cost) {
            tidy.holdBehind(job, behind);
          } else {
            cost = pass.keep(tidy, touched);
          }
        }
      }
    }
    return lastOnes(tidy, cost);
  }

  /** Jobs that find no place come last on their press. */
  private Sequences lastOnes(Sequences tidy, long cost) {
    pass.value(tidy);
    Sequences moved = tidy.copy();
    for (int p = 0; p < week.pressCount(); p++) {
      moved.clear(p);
      for (int i = 0; i < tidy.size(p); i++) {
        if (!pass.isLeftOut(tidy.job(p, i)) || week.isFixed(tidy.job(p, i))) {
          moved.add(p, tidy.job(p, i));
        }
      }
      for (int i = 0; i < tidy.size(p); i++) {
        if (pass.isLeftOut(tidy.job(p, i)) && !week.isFixed(tidy.job(p, i))) {
          moved.add(p, tidy.job(p, i));
        }
      }
    }
    return pass.value(moved) <= cost ? moved : tidy;
  }
}
