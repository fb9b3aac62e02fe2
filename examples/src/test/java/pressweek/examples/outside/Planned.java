package pressweek.examples.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;
import pressweek.solver.Planner;
import pressweek.solver.audit.Audit;

/** The planner as a user has it, limited by steps, so that every machine finds the same plan. */
final class Planned {
  private Planned() {}

  /** The plan after so many steps with a seed, which keeps all rules, as the audit says. */
  static Plan inSteps(Problem problem, int steps, long seed) {
    Settings settings = new Settings(0, steps, seed);
    Head head = new Head("outside/1", "", SmallPlant.START, Map.of(), settings, List.of(), false);
    Plan plan = new Planner(problem).plan(head, Optional.empty(), progress -> {});
    assertThat(Audit.check(problem, plan)).as("findings of the audit").isEmpty();
    return plan;
  }
}
