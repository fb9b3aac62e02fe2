package pressweek.app.plan;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import pressweek.data.files.Folder;
import pressweek.data.files.OrderRow;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.data.week.RushWeek;
import pressweek.reports.moves.Moves;
import pressweek.reports.moves.MovesList;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;
import pressweek.solver.repair.Promises;
import pressweek.solver.repair.Repair;
import pressweek.solver.repair.Repaired;
import pressweek.solver.repair.RunNumbers;
import pressweek.solver.why.Replay;

/**
 * Plans what is left of an earlier plan after something happened, and moves as little as it can.
 */
public final class Replanner {
  /** Under these names the inputs of a repaired plan have the earlier plan and the events. */
  public static final String PLAN_INPUT = "plan.json";

  public static final String EVENTS_INPUT = "events.csv";

  private final Folder folder;
  private final EarlierPlans earlier;
  private final Plan plan;
  private final Happened happened;
  private final List<Planner> planners = new CopyOnWriteArrayList<>();
  private volatile boolean stopped;

  /**
   * What happened.
   *
   * @param events events of things that the earlier plan knows
   * @param rush new order lines
   * @param nowMin the present of the plan, minutes since 1970 UTC
   * @param hashes SHA-256 of the earlier plan and of the events, by the names above
   */
  public record Happened(
      List<FloorEvent> events, List<OrderRow> rush, int nowMin, Map<String, String> hashes) {
    public Happened {
      events = List.copyOf(events);
      rush = List.copyOf(rush);
      hashes = Map.copyOf(hashes);
    }
  }

  /**
   * A plan with what it moves.
   *
   * @param audited the plan and what an audit found
   * @param moves what it moves
   */
  public record Result(WeekPlanner.Audited audited, Moves moves) {}

  /**
   * A planner for what is left.
   *
   * @param folder the plant's folder, by which new order lines are read
   * @param earlier the plans before it; the replaced one is there
   * @param happened what happened
   */
  public Replanner(Folder folder, EarlierPlans earlier, Happened happened) {
    this.folder = folder;
    this.earlier = earlier;
    this.plan = earlier.replaced().orElseThrow();
    this.happened = happened;
  }

  /** Ends the search soon; the best plan so far is the plan. */
  public void stop() {
    stopped = true;
    planners.forEach(Planner::stop);
  }

  /**
   * Plans and audits. A promise to the floor that what happened makes impossible is given up, and
   * said so.
   *
   * @param settings limits and seed
   * @param madeMin when the plan is made, minutes since 1970 UTC
   * @param watcher told of every better plan
   */
  public Result plan(Settings settings, int madeMin, Watcher watcher) {
    Optional<RushWeek> rush =
        happened.rush().isEmpty()
            ? Optional.empty()
            : RushWeek.build(folder, happened.rush(), happened.nowMin());
    Repaired left = Repair.of(plan, happened.events(), rush, happened.nowMin());
    List<String> notes = new ArrayList<>(left.notes());
    WeekPlanner.Audited audited =
        keepingPromises(left.problem(), notes, p -> audited(p, settings, madeMin, watcher));
    notes.addAll(fromStock(left.problem()));
    Problem unchanged = Repair.of(plan, List.of(), Optional.empty(), happened.nowMin()).problem();
    Moves moves =
        new Moves(
            plan,
            Replay.of(unchanged, plan),
            audited.plan(),
            happened.events(),
            left.ended(),
            notes);
    return new Result(audited, moves);
  }

  /** Plans, and plans again without the promises that an audit found broken. */
  private WeekPlanner.Audited keepingPromises(
      Problem problem, List<String> notes, Function<Problem, WeekPlanner.Audited> planning) {
    Problem left = problem;
    WeekPlanner.Audited audited = planning.apply(left);
    List<String> broken = Promises.broken(audited.plan(), audited.findings());
    while (!broken.isEmpty() && !stopped) {
      broken.forEach(
          line -> notes.add("line " + line + " cannot be where it was promised; it is given up"));
      left = Promises.without(left, broken);
      audited = planning.apply(left);
      broken = Promises.broken(audited.plan(), audited.findings());
    }
    return audited;
  }

  private WeekPlanner.Audited audited(
      Problem problem, Settings settings, int madeMin, Watcher watcher) {
    Planner planner = new Planner(problem);
    planners.add(planner);
    if (stopped) {
      planner.stop();
    }
    Plan made = planner.plan(head(problem, settings, madeMin), Optional.of(plan), watcher);
    Plan numbered = RunNumbers.kept(plan, made);
    List<Finding> findings = Audit.check(problem, numbered);
    return new WeekPlanner.Audited(numbered, findings);
  }

  private Head head(Problem problem, Settings settings, int madeMin) {
    Hours hours = problem.plant().hours();
    PlanNumber number = PlanNumber.after(earlier, hours);
    Map<String, String> inputs = new HashMap<>(folder.inputs());
    inputs.putAll(happened.hashes());
    return new Head(
        number.number(), number.replaces(), madeMin, inputs, settings, List.of(), false);
  }

  /** New lines that are neither planned nor unplaced have their pieces in finished stock. */
  private List<String> fromStock(Problem problem) {
    Set<String> known = new HashSet<>(problem.jobs().stream().map(Job::id).toList());
    problem.unplaced().stream().map(Unplaced::id).forEach(known::add);
    return happened.rush().stream()
        .map(OrderRow::id)
        .filter(id -> known.stream().noneMatch(k -> k.equals(id) || k.startsWith(id + "/")))
        .map(id -> "line " + id + " has its pieces in finished stock; nothing to make")
        .toList();
  }

  /**
   * Writes all that a plan is written as, and what moved.
   *
   * @return the files written
   * @throws IOException when one cannot be written
   */
  public List<Path> write(Result result, Path out, int nowMin) throws IOException {
    return WeekPlanner.write(
        result.audited(),
        earlier,
        new WeekPlanner.Place(out, nowMin),
        List.of(MovesList.of(result.moves())));
  }
}
