package pressweek.reports.handover;

import java.util.List;
import java.util.TreeSet;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.reports.schedule.PlanBook;

/**
 * What the floor has to know of a run in one plan.
 *
 * @param run the run
 * @param job what it makes
 * @param lateMin minutes late; 0 when on time
 * @param inserts inserts that are brought, each with pieces, lot and bin, in the order of the text
 */
public record RunState(Run run, Job job, int lateMin, List<String> inserts) {
  public RunState {
    inserts = List.copyOf(inserts);
  }

  /** The run with the pulls that are for it. */
  static RunState of(PlanBook book, Run run, List<Pull> pulls) {
    TreeSet<String> inserts = new TreeSet<>();
    pulls.forEach(p -> inserts.add(words(p)));
    return new RunState(run, book.job(run), book.lateMin(run), List.copyOf(inserts));
  }

  /** A pull in words: {@code S0825 540 from C1-2, lot L1}. */
  private static String words(Pull pull) {
    String bin = pull.bin().isBlank() ? "" : " from " + pull.bin();
    String lot = pull.lot().isBlank() ? "" : (bin.isEmpty() ? " lot " : ", lot ") + pull.lot();
    return pull.insert() + " " + pull.pieces() + bin + lot;
  }
}
