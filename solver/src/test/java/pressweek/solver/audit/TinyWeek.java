package pressweek.solver.audit;

import static pressweek.solver.audit.Parts.mold;
import static pressweek.solver.audit.Parts.press;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Crew;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Job;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Stock;

/**
 * The presses and hours of {@link WeekProblem} with no crew, stock, promises or rates to check, for
 * tests that bring their own.
 */
final class TinyWeek {
  private TinyWeek() {}

  static Problem problem(Job... jobs) {
    Problem problem = WeekProblem.problem();
    List<Press> presses =
        List.of(
            press("P1", FoodUse.OPEN, "two", 0),
            press("P2", FoodUse.OPEN, "two", 0),
            press("P3", FoodUse.OPEN, "day", 0));
    problem = Edited.set(problem, "floor.presses", presses);
    problem =
        Edited.set(problem, "floor.molds", List.of(mold("M1"), mold("M2"), mold("M3"), mold("M4")));
    problem = Edited.set(problem, "floor.downtime", List.of());
    problem = Edited.set(problem, "floor.promises", List.of());
    problem = Edited.set(problem, "floor.recordedChanges", List.of());
    problem = Edited.set(problem, "floor.states[P1].job", "");
    problem = Edited.set(problem, "materials.stock", new Stock(false, List.of(), List.of()));
    for (int i = 0; i < problem.materials().resins().size(); i++) {
      problem = Edited.set(problem, "materials.resins[" + i + "].pricePerKg", 0L);
    }
    problem = Edited.set(problem, "plant.crew", new Crew(false, false, 80, false, 30));
    problem = Edited.set(problem, "plant.rates", new Rates("EUR", false, 0, 0, 0, 0, 0, 0));
    problem = Edited.set(problem, "unplaced", List.of());
    return Edited.set(problem, "jobs", List.of(jobs));
  }

  /** A plan of these runs, none of them late, with totals of what they say themselves. */
  static Plan plan(Problem problem, List<Run> runs, Pull... pulls) {
    Plan plan = WeekPlan.plan();
    plan = Edited.set(plan, "problem", problem);
    plan = Edited.set(plan, "runs", inOrder(runs));
    plan = Edited.set(plan, "dismounts", List.of());
    plan = Edited.set(plan, "pulls", List.of(pulls));
    plan = Edited.set(plan, "unplaced", List.of());
    plan = Edited.set(plan, "unplacedCharges", List.of());
    long changes = runs.stream().filter(run -> !run.change().kinds().isEmpty()).count();
    long minutes = runs.stream().mapToLong(run -> run.change().minutes()).sum();
    long purgeG = runs.stream().mapToLong(run -> run.change().purgeG()).sum();
    Figures figures = new Figures(runs.size(), 0, 0, 0, (int) changes, minutes, purgeG, Map.of());
    return Edited.set(plan, "figures", figures);
  }

  /** The plan with what it decides for the plant as a whole, and with costs of all it charges. */
  static Plan with(Plan plan, PlantWide whole) {
    Map<Rule, Long> costs = new EnumMap<>(Rule.class);
    plan.runs()
        .forEach(run -> run.charges().forEach(c -> costs.merge(c.rule(), c.amount(), Long::sum)));
    whole.charges().forEach(c -> costs.merge(c.rule(), c.amount(), Long::sum));
    return Edited.set(
        Edited.set(plan, "head.whole", Optional.of(whole)), "figures.costByRule", costs);
  }

  private static List<Run> inOrder(List<Run> runs) {
    List<Run> sorted = new ArrayList<>(runs);
    sorted.sort(Comparator.comparing(Run::press).thenComparing(Run::seq));
    return sorted;
  }

  /** What the audit finds, each with its rule before it. */
  static List<String> told(Plan plan) {
    return Audit.check(plan.problem(), plan).stream()
        .map(finding -> finding.rule() + " " + finding.message())
        .toList();
  }

  static List<String> messages(Plan plan) {
    return Audit.check(plan.problem(), plan).stream().map(Finding::message).toList();
  }
}
