package pressweek.solver.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;

/**
 * Plans the week again with each change that could cure a line, by a short search from the plan as
 * it is, and compares with the same search without the change.
 */
final class CureSearch {
  private final Plan plan;
  private final Job job;
  private final Settings each;

  private CureSearch(Plan plan, Job job, Settings each) {
    this.plan = plan;
    this.job = job;
    this.each = each;
  }

  /**
   * The cures.
   *
   * @param plan the plan
   * @param job the line
   * @param changes what is tried
   * @param limits limits of all searches together where they are seconds, of each where they are
   *     steps
   */
  static Cures of(Plan plan, Job job, List<PlantChange> changes, Settings limits) {
    int seconds = limits.steps() > 0 ? 0 : Math.max(1, limits.seconds() / (changes.size() + 1));
    CureSearch search =
        new CureSearch(plan, job, new Settings(seconds, limits.steps(), limits.seed()));
    return search.search(changes);
  }

  private Cures search(List<PlantChange> changes) {
    Plan without = planned(plan.problem());
    int late = late(without);
    List<Cure> helping = new ArrayList<>();
    for (PlantChange change : changes) {
      Plan with = planned(change.problem());
      if (late(with) < late) {
        helping.add(
            new Cure(
                change.words(),
                late(with) < Integer.MAX_VALUE,
                late(with),
                with.figures().avoidableCost() - without.figures().avoidableCost()));
      }
    }
    helping.sort(Comparator.comparingLong(Cure::costsMore).thenComparingInt(Cure::lateMin));
    return new Cures(changes.size(), helping);
  }

  /** Minutes late in a plan; more than any where it has no place. */
  private int late(Plan of) {
    Optional<Run> run = of.runs().stream().filter(r -> r.job().equals(job.id())).findFirst();
    return run.map(r -> Math.max(0, r.readyMin() - job.deadline().dueMin()))
        .orElse(Integer.MAX_VALUE);
  }

  private Plan planned(Problem problem) {
    Head head = plan.head();
    Head limited =
        new Head(
            head.number(), head.replaces(), head.madeMin(), head.inputs(), each, List.of(), false);
    return new Planner(problem).plan(limited, Optional.of(plan), Watcher.NONE);
  }
}
