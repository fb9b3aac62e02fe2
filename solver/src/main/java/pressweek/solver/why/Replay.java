package pressweek.solver.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.Timetable;
import pressweek.solver.timing.WeekTables;

/**
 * The order of a plan carried out anew for another problem, without any search. What comes of it is
 * for comparing by: it names no lots to pull.
 */
public final class Replay {
  private final Problem problem;
  private final WeekTables week;
  private final List<List<Integer>> queues = new ArrayList<>();
  private final Map<String, LeftOut> leftOut = new LinkedHashMap<>();

  /** A line that has no place in the plan, and what that costs. */
  private record LeftOut(Unplaced line, Charge charge) {}

  private Replay(Problem problem, WeekTables week) {
    this.problem = problem;
    this.week = week;
    for (int p = 0; p < week.pressCount(); p++) {
      queues.add(new ArrayList<>());
    }
  }

  /**
   * The plan's order in another problem: what is running or promised there comes first, lines that
   * the plan left out stay out, lines that it does not know come last on the first press that may
   * run them.
   *
   * @param problem the problem
   * @param plan whose order counts
   */
  public static Plan of(Problem problem, Plan plan) {
    return of(problem, plan, new WeekTables(problem));
  }

  /** The same by tables of the problem that are at hand. */
  public static Plan of(Problem problem, Plan plan, WeekTables week) {
    Replay replay = new Replay(problem, week);
    replay.fill(plan, Optional.empty());
    return replay.carryOut(plan, -1);
  }

  /** A line on a press, so many places after what is fixed there: 0 for the first. */
  record Spot(String line, String press, int place) {}

  /** The same with one line in another place. */
  static Plan with(Plan plan, Spot spot, WeekTables week) {
    Replay replay = new Replay(plan.problem(), week);
    replay.fill(plan, Optional.of(spot));
    return replay.carryOut(plan, week.job(spot.line()));
  }

  /** The same with one line left out by hand. */
  static Plan without(Plan plan, Unplaced line, WeekTables week) {
    Replay replay = new Replay(plan.problem(), week);
    int job = week.job(line.id());
    Charge charge = new Charge(Rule.UNPLACED, week.unplacedCost(job), line.reason());
    replay.leftOut.put(line.id(), new LeftOut(line, charge));
    List<Run> others = plan.runs().stream().filter(r -> !r.job().equals(line.id())).toList();
    replay.fill(plan.withRuns(others), Optional.empty());
    return replay.carryOut(plan, job);
  }

  private void fill(Plan plan, Optional<Spot> spot) {
    boolean[] placed = new boolean[week.jobCount()];
    for (int p = 0; p < week.pressCount(); p++) {
      for (int job : week.fixedOn(p)) {
        add(placed, p, job);
      }
    }
    List<Integer> fixed = queues.stream().map(List::size).toList();
    int moved = spot.map(s -> week.job(s.line())).orElse(-1);
    if (moved >= 0) {
      placed[moved] = true;
    }
    for (Run run : plan.runs()) {
      add(placed, week.pressOrNone(run.press()), week.job(run.job()));
    }
    leftOut.keySet().forEach(line -> placed[week.job(line)] = true);
    leaveOut(plan, placed);
    for (int job = 0; job < week.jobCount(); job++) {
      for (int p = 0; p < week.pressCount() && !placed[job]; p++) {
        add(placed, p, job);
      }
    }
    if (moved >= 0) {
      int press = week.pressOrNone(spot.get().press());
      List<Integer> queue = queues.get(press);
      int place = Math.min(queue.size(), fixed.get(press) + spot.get().place());
      queue.add(place, moved);
    }
  }

  /** Charges of unplaced lines are in the order of those that were to be planned. */
  private void leaveOut(Plan plan, boolean[] placed) {
    Set<String> jobs = new HashSet<>(plan.problem().jobs().stream().map(Job::id).toList());
    List<Unplaced> charged = plan.unplaced().stream().filter(u -> jobs.contains(u.id())).toList();
    for (int i = 0; i < Math.min(charged.size(), plan.unplacedCharges().size()); i++) {
      int job = week.job(charged.get(i).id());
      if (job >= 0 && !placed[job] && runsSomewhere(job)) {
        placed[job] = true;
        // By this problem's rates, which need not be those of the plan.
        String because = plan.unplacedCharges().get(i).because();
        Charge charge = new Charge(Rule.UNPLACED, week.unplacedCost(job), because);
        leftOut.put(charged.get(i).id(), new LeftOut(charged.get(i), charge));
      }
    }
  }

  private boolean runsSomewhere(int job) {
    return IntStream.range(0, week.pressCount()).anyMatch(p -> week.canRun(job, p));
  }

  private void add(boolean[] placed, int press, int job) {
    if (press >= 0 && job >= 0 && !placed[job] && week.canRun(job, press)) {
      queues.get(press).add(job);
      placed[job] = true;
    }
  }

  /** Opens shifts and holds back as the plan did, except for a line that moves. */
  private void holdBack(Sequences sequences, Plan plan, int moved) {
    week.choices(plan.head().plantWide(), sequences);
    for (int job = 0; job < week.jobCount(); job++) {
      if (job == moved || sequences.behind(job) == moved) {
        sequences.holdBehind(job, -1);
      }
    }
  }

  /**
   * A mold that goes from press to press goes in the order of the plan: from another time on
   * presses would come for it in another order.
   */
  private void holdMolds(Sequences sequences, Plan plan, int moved) {
    Map<String, Run> last = new HashMap<>();
    List<Run> byStart = new ArrayList<>(plan.runs());
    byStart.sort(Comparator.comparingInt(Run::startMin));
    for (Run run : byStart) {
      int job = week.job(run.job());
      Run before = last.get(run.mold());
      if (job >= 0 && job != moved) {
        int other = before == null ? -1 : week.job(before.job());
        if (before != null && !before.press().equals(run.press()) && !week.isFixed(job)) {
          sequences.holdBehind(job, other);
        }
        last.put(run.mold(), run);
      }
    }
  }

  private Plan carryOut(Plan plan, int moved) {
    Head head = plan.head();
    Sequences sequences = new Sequences(week.pressCount(), week.jobCount());
    for (int p = 0; p < queues.size(); p++) {
      for (int job : queues.get(p)) {
        sequences.add(p, job);
      }
    }
    if (problem.plant().hours().startMin() != plan.problem().plant().hours().startMin()) {
      holdMolds(sequences, plan, moved);
    }
    holdBack(sequences, plan, moved);
    Timetable timetable = Timetable.of(week, sequences);
    List<Unplaced> unplaced = new ArrayList<>(problem.unplaced());
    unplaced.addAll(timetable.unplaced());
    leftOut.values().forEach(left -> unplaced.add(left.line()));
    List<Run> runs = timetable.runs();
    List<Charge> charges = new ArrayList<>(timetable.unplacedCharges());
    leftOut.values().forEach(left -> charges.add(left.charge()));
    return new Plan(
        new Head(
            head.number(),
            head.replaces(),
            head.madeMin(),
            head.inputs(),
            new Settings(0, 0, head.settings().seed()),
            List.of(),
            false,
            Optional.of(timetable.whole())),
        problem,
        runs,
        timetable.dismounts(),
        List.of(),
        unplaced,
        charges,
        figures(timetable.figures(), unplaced.size()));
  }

  private Figures figures(Figures f, int unplaced) {
    Map<Rule, Long> costs = new EnumMap<>(Rule.class);
    costs.putAll(f.costByRule());
    leftOut.values().forEach(l -> costs.merge(l.charge().rule(), l.charge().amount(), Long::sum));
    return new Figures(
        f.placedLines(),
        unplaced,
        f.lateLines(),
        f.lateMin(),
        f.changes(),
        f.changeMin(),
        f.purgeG(),
        costs);
  }
}
