package pressweek.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.solver.bound.LowerBound;
import pressweek.solver.timing.Dispatch;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.Timetable;
import pressweek.solver.timing.WeekTables;

/**
 * Plans a week: a start by dispatch rules, then a search by local moves, all through one timing
 * pass. One planner plans one problem; {@link #stop} may be called from any thread and ends the
 * search with the best plan so far.
 */
public final class Planner {
  /** Values of ATCS's parameters, small to large; the grid tries every pair. */
  private static final double[] K1 = {0.2, 0.5, 1.0, 2.0, 5.0};

  private static final double[] K2 = {0.1, 0.3, 0.6, 1.2, 3.0};

  /**
   * From so many jobs on, the grid would take longer than a scheduler waits for a first plan, and
   * one pair is tried first.
   */
  private static final int LARGE = 2_000;

  private final Problem problem;
  private final WeekTables week;
  private final Search search;

  /** A planner for a problem. */
  public Planner(Problem problem) {
    this.problem = problem;
    week = new WeekTables(problem);
    search = new Search(week);
  }

  /** Ends the search soon; the best plan so far is the plan. */
  public void stop() {
    search.stop();
  }

  /**
   * Ends a search that time limits after so many milliseconds, if that is sooner than the seconds
   * of its settings, and has it cool down in that time.
   */
  public void within(long millis) {
    search.within(millis);
  }

  /** Has a search that time limits go on side by side so many times; as it is, once a core. */
  public void searches(int count) {
    search.searches(count);
  }

  /**
   * Plans the week.
   *
   * @param head who the plan is; references and stopped are filled in
   * @param start a plan to start from, where there is one for the same jobs
   * @param watcher told of every better plan
   */
  public Plan plan(Head head, Optional<Plan> start, Watcher watcher) {
    long begun = System.nanoTime();
    List<Reference> references = new ArrayList<>();
    Start first = start(references, begun, watcher);
    Sequences best = first.sequences();
    if (start.isPresent()) {
      Sequences warm = WarmStart.from(week, start.get(), best, search::cost);
      if (search.cost(warm) <= search.cost(best)) {
        best = warm;
        search.near(!problem.arranged().terms().earlier().isEmpty());
      }
    }
    Sequences found = new Tidying(week).tidy(search.improve(best, head.settings(), begun, watcher));
    Head done =
        new Head(
            head.number(),
            head.replaces(),
            head.madeMin(),
            head.inputs(),
            head.settings(),
            references,
            search.stopped());
    return write(done, found);
  }

  private record Start(Sequences sequences, long cost) {}

  /** The best of the simple ways; each is added to the references. */
  private Start start(List<Reference> references, long begun, Watcher watcher) {
    Dispatch dispatch = new Dispatch(week);
    Sequences byDue = dispatch.earliestDueDate();
    tell(byDue, begun, watcher);
    references.add(reference("earliest due date first", byDue));
    Start best = new Start(byDue, search.cost(byDue));
    Optional<Start> grid = Optional.empty();
    for (double k1 : week.jobCount() >= LARGE ? new double[] {1.0} : K1) {
      for (double k2 : week.jobCount() >= LARGE ? new double[] {0.3} : K2) {
        Sequences tried = dispatch.atcs(k1, k2);
        long cost = search.cost(tried);
        if (grid.isEmpty() || cost < grid.get().cost()) {
          grid = Optional.of(new Start(tried, cost));
        }
      }
    }
    Start atcs = grid.orElse(best);
    references.add(
        reference("setup-aware dispatch (ATCS), best of its parameters", atcs.sequences()));
    Start better = atcs.cost() < best.cost() ? atcs : best;
    tell(better.sequences(), begun, watcher);
    return better;
  }

  private void tell(Sequences sequences, long begun, Watcher watcher) {
    long millis = (System.nanoTime() - begun) / 1_000_000;
    watcher.seen(new Progress(millis, Timetable.of(week, sequences).figures()));
  }

  private Reference reference(String name, Sequences sequences) {
    Figures figures = Timetable.of(week, sequences).figures();
    return new Reference(
        name,
        figures.avoidableCost(),
        figures.lateLines() + figures.unplacedLines(),
        figures.changeMin());
  }

  /** What the plan decides as a whole, with the bound of the problem. */
  private PlantWide whole(Timetable timetable) {
    PlantWide decided = timetable.whole();
    return new PlantWide(
        decided.opened(),
        decided.held(),
        decided.dryings(),
        decided.charges(),
        LowerBound.of(problem));
  }

  private Plan write(Head head, Sequences sequences) {
    Timetable timetable = Timetable.of(week, sequences);
    Head whole =
        new Head(
            head.number(),
            head.replaces(),
            head.madeMin(),
            head.inputs(),
            head.settings(),
            head.references(),
            head.stopped(),
            Optional.of(whole(timetable)).filter(w -> !w.equals(PlantWide.NONE)));
    List<Unplaced> unplaced = new ArrayList<>(problem.unplaced());
    unplaced.addAll(timetable.unplaced());
    Figures f = timetable.figures();
    Figures figures =
        new Figures(
            f.placedLines(),
            unplaced.size(),
            f.lateLines(),
            f.lateMin(),
            f.changes(),
            f.changeMin(),
            f.purgeG(),
            f.costByRule());
    List<Run> runs = timetable.runs();
    List<Charge> unplacedCharges = timetable.unplacedCharges();
    assert unplacedCharges.stream().allMatch(c -> c.rule() == Rule.UNPLACED);
    return new Plan(
        whole,
        problem,
        runs,
        timetable.dismounts(),
        Pulling.of(problem, runs),
        unplaced,
        unplacedCharges,
        figures);
  }
}
