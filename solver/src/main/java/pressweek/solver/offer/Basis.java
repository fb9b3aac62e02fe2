package pressweek.solver.offer;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.solver.Finishing;
import pressweek.solver.Planner;
import pressweek.solver.StopSign;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;
import pressweek.solver.why.Reordering;
import pressweek.solver.why.Replay;

/**
 * What offers are held against.
 *
 * @param standing the plan without a new line, from the present on: both who becomes late and what
 *     it costs are counted from it
 * @param cheapest the cheapest plan without a new line that a search as long as those for offers
 *     found from it, or that plan itself: it tells what could be saved without an offer as well
 * @param drifted lines that are later in the standing plan than the plan itself says
 */
public record Basis(Plan standing, Plan cheapest, List<Later> drifted) {
  public Basis {
    drifted = List.copyOf(drifted);
  }

  /** What could be saved without a new line, thousandths of a cent; 0 where nothing was found. */
  public long saves() {
    return standing.figures().avoidableCost() - cheapest.figures().avoidableCost();
  }

  /**
   * What is left of a plan and stands.
   *
   * @param plan the plan
   * @param left what is left of its week; the plan's own problem where nothing has begun
   * @param each how long the search for the cheapest plan may take; its seed
   * @param stop ends that search
   */
  public static Basis of(Plan plan, Problem left, Settings each, StopSign stop) {
    return standing(plan, left).searched(each, stop);
  }

  /** The same before anything was searched for. */
  public static Basis standing(Plan plan, Problem left) {
    Plan unbound = plan.with(unbound(plan));
    if (left.equals(plan.problem())) {
      return new Basis(unbound, unbound, List.of());
    }
    Set<String> ids = left.jobs().stream().map(Job::id).collect(Collectors.toSet());
    Plan before =
        unbound.withRuns(plan.runs().stream().filter(r -> ids.contains(r.job())).toList());
    Plan replayed = Finishing.of(unbound.head(), Replay.of(left, plan), unbound);
    List<Later> drifted = Before.later(before, replayed);
    Plan standing = replayed;
    if (!drifted.isEmpty() || isMoved(plan, left, replayed)) {
      Plan kept = kept(unbound, before, left);
      List<Later> of = Before.later(before, kept);
      if (BETTER.compare(new Stood(kept, of), new Stood(replayed, drifted)) < 0) {
        standing = kept;
        drifted = of;
      }
    }
    return new Basis(standing, standing, drifted);
  }

  /**
   * With the cheapest plan that a search from the standing one finds.
   *
   * @param each how long it may take; its seed
   * @param stop ends it
   */
  public Basis searched(Settings each, StopSign stop) {
    return new Basis(standing, cheapest(standing, each, stop), drifted);
  }

  private record Stood(Plan plan, List<Later> drifted) {}

  private static final Comparator<Stood> BETTER =
      Comparator.<Stood>comparingInt(s -> s.drifted().size())
          .thenComparingLong(s -> s.plan().figures().avoidableCost());

  private static boolean isMoved(Plan plan, Problem left, Plan replayed) {
    return plan.problem().plant().hours().startMin() != left.plant().hours().startMin()
        && replayed.figures().avoidableCost() > 0;
  }

  /**
   * The plan kept to as a search's start keeps to it: runs may wait for the time they had. What has
   * no place in the plan gets none here, since nobody has been told of one.
   */
  private static Plan kept(Plan plan, Plan before, Problem left) {
    Problem leaning = Dues.protecting(left, Set.of(), new HashSet<>(before.runs()));
    Plan found =
        new Planner(leaning)
            .plan(
                head(plan, new Settings(0, 1, plan.head().settings().seed())),
                Optional.of(plan),
                Watcher.NONE);
    Set<String> placed = before.runs().stream().map(Run::job).collect(Collectors.toSet());
    Plan kept =
        before
            .with(found.head())
            .with(found.problem())
            .withRuns(found.runs().stream().filter(r -> placed.contains(r.job())).toList());
    return Finishing.of(plan.head(), Replay.of(left, kept), plan);
  }

  private static Plan cheapest(Plan standing, Settings each, StopSign stop) {
    if (stop.isGiven()) {
      return standing;
    }
    Problem problem = standing.problem();
    Planner planner = new Planner(problem);
    Plan found =
        stop.heeding(
            planner::stop,
            () -> planner.plan(head(standing, each), Optional.of(standing), Watcher.NONE));
    Plan carried = Finishing.of(standing.head(), Replay.of(problem, found), standing);
    boolean better = carried.figures().avoidableCost() < standing.figures().avoidableCost();
    return better
            && Reordering.broken(standing, carried).isEmpty()
            && broken(standing).containsAll(broken(carried))
        ? carried
        : standing;
  }

  private static Set<String> broken(Plan plan) {
    return Audit.check(plan.problem(), plan).stream()
        .map(Finding::message)
        .collect(Collectors.toSet());
  }

  /** The head of a plan without its bound, which was one of the whole week. */
  private static Head unbound(Plan plan) {
    Head head = plan.head();
    PlantWide whole = head.plantWide();
    PlantWide without =
        new PlantWide(
            whole.opened(), whole.held(), whole.dryings(), whole.charges(), Optional.empty());
    return new Head(
        head.number(),
        head.replaces(),
        head.madeMin(),
        head.inputs(),
        head.settings(),
        List.of(),
        false,
        Optional.of(without).filter(w -> !w.equals(PlantWide.NONE)));
  }

  /** The plan's head with limits, without a bound, which was one of the whole week. */
  static Head head(Plan plan, Settings limits) {
    Head head = plan.head();
    return new Head(
        head.number(), head.replaces(), head.madeMin(), head.inputs(), limits, List.of(), false);
  }
}
