package pressweek.examples.outside;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;
import pressweek.solver.Planner;

/** The planner as a user has it, limited by steps, so that every machine finds the same plan. */
final class Planned {
  private Planned() {}

  /** The plan after so many steps with a seed. */
  static Plan inSteps(Problem problem, int steps, long seed) {
    Settings settings = new Settings(0, steps, seed);
    Head head = new Head("outside/1", "", SmallPlant.START, Map.of(), settings, List.of(), false);
    return new Planner(problem).plan(head, Optional.empty(), progress -> {});
  }
}
