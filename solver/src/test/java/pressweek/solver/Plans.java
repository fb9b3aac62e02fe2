package pressweek.solver;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;

/** Plans made for tests, always by steps and never by the clock. */
public final class Plans {
  private Plans() {}

  /** A head with limits. */
  public static Head head(int steps, long seed) {
    return new Head("1", "", 0, Map.of(), new Settings(0, steps, seed), List.of(), false);
  }

  /** The plan of a problem after so many steps. */
  public static Plan of(Problem problem, int steps, long seed) {
    return new Planner(problem).plan(head(steps, seed), Optional.empty(), Watcher.NONE);
  }

  /** The run of the first line of an order. */
  public static Run run(Plan plan, String order) {
    return plan.runs().stream()
        .filter(r -> r.job().equals(order + "/1"))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no run of " + order));
  }
}
