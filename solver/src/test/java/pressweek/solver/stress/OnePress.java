package pressweek.solver.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Change;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Uncertainty;
import pressweek.solver.Plans;

/** Plans of one press in a given order; only their order counts for a replay. */
final class OnePress {
  static final Uncertainty.Effort EFFORT = new Uncertainty.Effort(21, 4, 300_000, 400, 90);

  private final SmallPlant plant = new SmallPlant();
  private final List<String> order = new ArrayList<>();

  OnePress days(int days) {
    plant.days(days);
    return this;
  }

  SmallPlant plant() {
    return plant;
  }

  /** Adds a job of one mold and material to the end of press P1. */
  OnePress job(String id, int earliestMin, int dueMin, int runMin) {
    plant.job(JobBuilder.job(id).earliest(earliestMin).due(dueMin).on("P1", "M1", runMin));
    order.add(id + "/1");
    return this;
  }

  Plan plan() {
    return plan(order);
  }

  /** A plan in another order. */
  Plan plan(List<String> ids) {
    return plan(plant.build(), ids);
  }

  /** Replays on one thread, for which work goes on long after the horizon. */
  static Replays replays(Plan plan, long seed) {
    return new Replays(plan, seed, 1, EFFORT.daysOn());
  }

  static Plan plan(Problem problem, List<String> ids) {
    List<Run> runs = new ArrayList<>();
    Setup setup = new Setup("M1", "", "PP", "BLK");
    Change none = new Change(setup, setup, List.of(), 0, 0, 0, 0);
    for (int i = 0; i < ids.size(); i++) {
      String id = ids.get(i);
      String press =
          problem.jobs().stream()
              .filter(j -> j.id().equals(id))
              .findFirst()
              .orElseThrow()
              .options()
              .get(0)
              .press();
      runs.add(new Run("R" + i, id, press, "M1", i + 1, none, 0, 0, 0, List.of(), List.of()));
    }
    return new Plan(
        Plans.head(1, 1),
        problem,
        runs,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new Figures(ids.size(), 0, 0, 0, 0, 0, 0, Map.of()));
  }
}
