package pressweek.reports.trace;

import java.util.List;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;

/**
 * The line clearance before a food-grade run.
 *
 * @param run the run
 * @param job what it makes
 * @param checks what is cleared, in turn
 */
public record Clearance(Run run, Job job, List<Check> checks) {
  public Clearance {
    checks = List.copyOf(checks);
  }

  /**
   * A thing to clear.
   *
   * @param what what it is
   * @param words what to see to
   */
  public record Check(String what, String words) {}
}
