package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;

/** What the checks have found so far, in the order in which they found it. */
final class Findings {
  private final List<Finding> found = new ArrayList<>();

  void add(Rule rule, String subject, String message) {
    found.add(new Finding(rule, subject, message));
  }

  /** A finding about a run: the run is named before what is said of it. */
  void add(Rule rule, Run run, String saying) {
    found.add(new Finding(rule, run.id(), Words.of(run) + " " + saying));
  }

  List<Finding> all() {
    return List.copyOf(found);
  }
}
