package pressweek.app.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import pressweek.app.plan.EarlierPlans;
import pressweek.app.plan.WeekPlanner;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Problem;
import pressweek.reports.compare.Notes;
import pressweek.reports.compare.PlanFigures;
import pressweek.reports.compare.SideBySide;
import pressweek.reports.compare.Tried;
import pressweek.reports.schedule.PlanBook;
import pressweek.solver.audit.Finding;

/**
 * Plans every week with every seed, has each plan audited, and puts them side by side. All weeks
 * are planned with one seed before the next, so that whatever is there after a while can be
 * compared. A search that time limits uses both cores itself; of searches that steps limit, two go
 * on side by side.
 */
public final class ScenarioPlanner {
  private static final EarlierPlans NONE = new EarlierPlans(Optional.empty(), List.of(), List.of());
  private static final int SIDE_BY_SIDE = 2;

  private final List<ScenarioWeek> weeks;
  private final Effort effort;
  private final List<Plan> promised;
  private final AtomicBoolean stopped = new AtomicBoolean();
  private final Set<WeekPlanner> underWay = ConcurrentHashMap.newKeySet();

  /**
   * A planner of weeks.
   *
   * @param weeks the weeks, the folder as it stands first
   * @param effort how each plan is searched for
   * @param promised the plan that the floor has been promised, against which moves are counted
   */
  public ScenarioPlanner(List<ScenarioWeek> weeks, Effort effort, Optional<Plan> promised) {
    this.weeks = List.copyOf(weeks);
    this.effort = effort;
    this.promised = promised.stream().toList();
  }

  /** A plan that is to be made. */
  private record Task(ScenarioWeek week, long seed) {}

  /** A plan that was made. */
  private record Made(ScenarioWeek week, Tried.Planned planned, boolean cut) {}

  /** Ends the searches soon; the plans so far are compared. */
  public void stop() {
    stopped.set(true);
    underWay.forEach(WeekPlanner::stop);
  }

  /**
   * Makes all plans.
   *
   * @param told told of each plan that is made, in a line
   */
  public SideBySide plan(Consumer<String> told) {
    List<Task> tasks = new ArrayList<>();
    effort.all().forEach(seed -> weeks.forEach(week -> tasks.add(new Task(week, seed))));
    ExecutorService threads = Executors.newFixedThreadPool(effort.repeatable() ? SIDE_BY_SIDE : 1);
    List<Made> made = new ArrayList<>();
    try {
      List<Future<Optional<Made>>> futures =
          tasks.stream().map(task -> threads.submit(() -> make(task))).toList();
      for (Future<Optional<Made>> future : futures) {
        Optional<Made> one = future.get();
        one.ifPresent(made::add);
        one.ifPresent(m -> told.accept(line(m, made.size(), tasks.size())));
      }
    } catch (InterruptedException e) {
      stop();
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      stop();
      throw new IllegalStateException("planning a scenario failed", e.getCause());
    } finally {
      threads.shutdown();
    }
    return sideBySide(made);
  }

  private Optional<Made> make(Task task) {
    WeekPlanner planner = new WeekPlanner(task.week().folder(), task.week().problem());
    underWay.add(planner);
    try {
      if (stopped.get()) {
        return Optional.empty();
      }
      WeekPlanner.Audited audited =
          planner.plan(NONE, effort.with(task.seed()), effort.nowMin(), progress -> {});
      PlanBook book = PlanBook.of(audited.plan());
      List<String> findings = audited.findings().stream().map(Finding::message).toList();
      Tried.Planned planned =
          new Tried.Planned(
              task.seed(),
              book,
              PlanFigures.of(book, promised.stream().findFirst()),
              findings,
              BrokenPromises.of(audited.plan(), audited.findings()));
      return Optional.of(new Made(task.week(), planned, audited.plan().head().stopped()));
    } finally {
      underWay.remove(planner);
    }
  }

  private static String line(Made made, int count, int all) {
    PlanFigures.Delivery delivery = made.planned().figures().delivery();
    return "%d of %d  %s, seed %d: %d of %d lines on time%s"
        .formatted(
            count,
            all,
            made.week().name(),
            made.planned().seed(),
            delivery.onTime(),
            delivery.lines(),
            made.planned().sound() ? "" : "; REJECTED by the audit");
  }

  private SideBySide sideBySide(List<Made> made) {
    Map<String, List<Made>> byName = new HashMap<>();
    made.forEach(m -> byName.computeIfAbsent(m.week().name(), n -> new ArrayList<>()).add(m));
    List<Tried> all = new ArrayList<>();
    for (ScenarioWeek week : weeks) {
      all.add(tried(week, byName.getOrDefault(week.name(), List.of())));
    }
    return new SideBySide(
        weeks.get(0).problem().plant().name(),
        all.get(0),
        all.subList(1, all.size()),
        effort.words(),
        stopped.get(),
        effort.nowMin());
  }

  /** A search that was cut off had less effort than others; it counts only where it is alone. */
  private Tried tried(ScenarioWeek week, List<Made> made) {
    List<Made> whole = made.stream().filter(m -> !m.cut()).toList();
    List<Made> counted = whole.isEmpty() ? made : whole;
    List<String> notes = new ArrayList<>();
    if (week.scenario().given()) {
      Problem base = weeks.get(0).problem();
      notes.addAll(Notes.of(base, week.problem()));
      List<Plan> plans = counted.stream().map(m -> m.planned().book().plan()).toList();
      notes.addAll(Notes.unopened(base, week.problem(), plans));
    }
    return new Tried(
        week.name(),
        week.scenario().words(),
        week.out(),
        notes,
        counted.stream().map(Made::planned).toList());
  }
}
