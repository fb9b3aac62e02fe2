package pressweek.app.compare;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Job;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Promise;
import pressweek.solver.audit.Finding;

/** Promises to the floor that a plan does not keep. */
final class BrokenPromises {
  private BrokenPromises() {}

  /**
   * The order lines whose promise is not kept, where that is all that the audit found; none where
   * it found something else as well.
   */
  static List<OrderLine> of(Plan plan, List<Finding> findings) {
    Map<String, String> made = new HashMap<>();
    plan.runs().forEach(run -> made.put(run.id(), run.job()));
    Set<String> promised =
        plan.problem().floor().promises().stream().map(Promise::job).collect(Collectors.toSet());
    Set<String> broken = new LinkedHashSet<>();
    for (Finding finding : findings) {
      String job = made.getOrDefault(finding.subject(), finding.subject());
      if (finding.rule() != Rule.PROMISED || !promised.contains(job)) {
        return List.of();
      }
      broken.add(job);
    }
    return plan.problem().jobs().stream()
        .filter(job -> broken.contains(job.id()))
        .map(Job::line)
        .toList();
  }
}
