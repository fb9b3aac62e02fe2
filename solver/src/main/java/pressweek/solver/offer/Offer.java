package pressweek.solver.offer;

import java.util.List;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.solver.audit.Finding;

/**
 * A way to take a new line into a plan.
 *
 * @param plan the plan with it
 * @param runs the runs of the new line, the last one to be ready last
 * @param readyMin when it is ready to ship, minutes since 1970 UTC
 * @param promisedMin the shipping cut-off that it makes, which may be promised
 * @param price what it costs, and who pays
 * @param findings hard rules which an audit finds broken here and not in the plan without the line;
 *     an offer with one is never to be given
 */
public record Offer(
    Plan plan, List<Run> runs, int readyMin, int promisedMin, Price price, List<Finding> findings) {
  public Offer {
    runs = List.copyOf(runs);
    findings = List.copyOf(findings);
  }

  /** True when no line becomes late, or later than it was, and none loses its place. */
  public boolean harmsNobody() {
    return price.later().isEmpty();
  }
}
