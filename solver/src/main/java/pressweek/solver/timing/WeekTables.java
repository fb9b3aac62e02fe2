package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import pressweek.data.plan.PlantWide;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.solver.rules.ChangeRules;
import pressweek.solver.rules.Charges;
import pressweek.solver.rules.Names;

/**
 * A problem as the timing pass reads it: built once, never changed, shared by all passes over the
 * problem.
 */
public final class WeekTables {
  private static final int DAY = 1440;

  /** Where work may go on after the horizon, a run may take so many times what is planned. */
  private static final int LONGER = 4;

  final Problem problem;
  final Names names;
  final StockTable stock;
  final JobTable jobs;
  final Charges charges;
  final int presses;
  final int start;
  final int end;
  final int insertLead;
  final int moveTolerance;

  /** Shifts that are worked always, and those that a plan may open. */
  final OpenShifts shifts;

  /** Working times by the overtime shifts that are open. */
  private final Map<Long, WorkTimes> times = new ConcurrentHashMap<>();

  final int[] standing;
  final int[] standingTooling;
  final int[] standingMaterial;
  final boolean[] standingCleared;

  /** The job that is running on a press, or -1. */
  final int[] running;

  /** The mold it runs in, or -1 when the plant did not say. */
  final int[] runningMold;

  /** Promised start of a job, or -1. */
  final int[] promised;

  /** Jobs fixed at the head of each press: what is running, then what is promised by start. */
  final int[][] fixed;

  /** PRESS_RATE and KEPT_PRESS of an option. */
  final long[] pressRate;

  final long[] keptPress;

  /**
   * Jobs that no press may take, since none that could is open for food-grade (or for other) work.
   */
  final int[] nowhere;

  final long nowhereCost;

  private final int daysOn;

  /** For guesses only, by the thread that builds a search. */
  private final ChangeRules guess;

  public WeekTables(Problem problem) {
    this(problem, 0);
  }

  /**
   * The same for a plan whose work may go on after the horizon.
   *
   * @param daysOn days after the horizon up to which runs may begin
   */
  WeekTables(Problem problem, int daysOn) {
    this.problem = problem;
    this.daysOn = daysOn;
    names = new Names(problem);
    stock = new StockTable(problem);
    jobs = new JobTable(problem, names, stock);
    charges = new Charges(problem, names);
    List<Press> list = problem.floor().presses();
    presses = list.size();
    shifts = new OpenShifts(problem);
    start = problem.plant().hours().startMin();
    end = problem.plant().hours().endMin() + daysOn * DAY;
    insertLead = problem.plant().crew().insertLeadMin();
    moveTolerance = problem.plant().moveToleranceMin();
    standing = new int[presses];
    standingTooling = new int[presses];
    standingMaterial = new int[presses];
    standingCleared = new boolean[presses];
    running = new int[presses];
    runningMold = new int[presses];
    promised = new int[jobs.jobs.size()];
    fixed = new int[presses][];
    readFloor();
    pressRate = new long[jobs.option.length];
    keptPress = new long[jobs.option.length];
    chargeOptions();
    guess = changeRules();
    nowhere = IntStream.range(0, jobCount()).filter(this::fitsNowhere).toArray();
    nowhereCost = Arrays.stream(nowhere).mapToLong(charges::unplaced).sum();
  }

  private boolean fitsNowhere(int job) {
    return IntStream.range(0, presses).noneMatch(p -> jobs.canRun(job, p));
  }

  private void readFloor() {
    Arrays.fill(standing, -1);
    Arrays.fill(running, -1);
    Arrays.fill(runningMold, -1);
    Arrays.fill(promised, -1);
    List<List<Integer>> heads = new ArrayList<>();
    for (int p = 0; p < presses; p++) {
      heads.add(new ArrayList<>());
    }
    for (PressState state : problem.floor().states()) {
      int p = names.press(state.press());
      standing[p] = state.setup().mold().isEmpty() ? -1 : names.mold(state.setup().mold());
      standingTooling[p] = names.tooling(state.setup().tooling());
      standingMaterial[p] = names.material(state.setup().resin(), state.setup().colour());
      standingCleared[p] = state.clearedForFood();
      int job = names.job(state.job());
      if (job >= 0 && jobs.canRun(job, p)) {
        running[p] = job;
        runningMold[p] = standing[p];
        heads.get(p).add(job);
      }
    }
    List<Promise> promises = new ArrayList<>(problem.floor().promises());
    promises.sort(Comparator.comparingInt(Promise::startMin).thenComparing(Promise::job));
    for (Promise promise : promises) {
      int job = names.job(promise.job());
      int p = names.press(promise.press());
      if (job >= 0 && jobs.canRun(job, p) && !heads.get(p).contains(job)) {
        promised[job] = promise.startMin();
        heads.get(p).add(job);
      }
    }
    for (int p = 0; p < presses; p++) {
      fixed[p] = heads.get(p).stream().mapToInt(Integer::intValue).toArray();
    }
  }

  private void chargeOptions() {
    List<Press> list = problem.floor().presses();
    for (int j = 0; j < jobs.jobs.size(); j++) {
      Job job = jobs.jobs.get(j);
      for (int p = 0; p < presses; p++) {
        for (int o = jobs.first(j, p); o < jobs.last(j, p); o++) {
          Option option = jobs.option[o];
          pressRate[o] = charges.pressRate(job, option);
          keptPress[o] = charges.keptPress(list.get(p), job, option);
        }
      }
    }
  }

  /** Dryers as they stand at the start, a fresh copy. */
  Dryers dryers() {
    return new Dryers(problem, this);
  }

  /** How many jobs there are to place. */
  public int jobCount() {
    return jobs.jobs.size();
  }

  /** How many presses there are. */
  public int pressCount() {
    return presses;
  }

  /** Whether a job may be placed on a press at all. */
  public boolean canRun(int job, int press) {
    return jobs.canRun(job, press);
  }

  /** The mold of the first way to make a job. */
  public int firstMold(int job) {
    int first = firstOption(job);
    return first < 0 ? -1 : jobs.mold[first];
  }

  /** The material of a job. */
  public int material(int job) {
    return jobs.material[job];
  }

  /** The first way to make a job, or -1 for none. */
  int firstOption(int job) {
    for (int p = 0; p < presses; p++) {
      if (jobs.first(job, p) < jobs.last(job, p)) {
        return jobs.first(job, p);
      }
    }
    return -1;
  }

  /**
   * Minutes of change between two jobs where both can run on a press, of the first such press; -1
   * where they never can or must not meet.
   */
  public int changeGuess(int before, int after) {
    for (int p = 0; p < presses; p++) {
      if (jobs.canRun(before, p) && jobs.canRun(after, p)) {
        if (guess.forbidden(jobs.material[before], jobs.material[after])) {
          return -1;
        }
        int o = jobs.first(before, p);
        ChangeRules.State state = new ChangeRules.State();
        state.mold = jobs.mold[o];
        state.tooling = jobs.tooling[o];
        state.material = jobs.material[before];
        int next = jobs.first(after, p);
        guess.ask(p, state, jobs.mold[next], jobs.tooling[next], jobs.material[after], false);
        return guess.minutes;
      }
    }
    return -1;
  }

  /** Whether a job is fixed to a press: running there or promised. */
  public boolean isFixed(int job) {
    return promised[job] >= 0 || Arrays.stream(running).anyMatch(r -> r == job);
  }

  /** Jobs fixed at the head of a press, in order. */
  public int[] fixedOn(int press) {
    return fixed[press].clone();
  }

  /** The number of a job of this problem by its id, or -1. */
  public int job(String id) {
    return names.job(id);
  }

  /** The number of a press of this problem by its id. */
  public int press(String id) {
    return names.press(id);
  }

  /** The number of a press of this problem by its id, or -1. */
  public int pressOrNone(String id) {
    return names.pressOrNone(id);
  }

  /** Working times with certain overtime shifts open. */
  WorkTimes times(long open) {
    int longest = jobs.longestRun() * (daysOn == 0 ? 1 : LONGER) + (daysOn + 1) * DAY;
    return times.computeIfAbsent(
        open, bits -> new WorkTimes(problem, shifts, bits, longest, daysOn));
  }

  /** OVERTIME of opened shifts. */
  long overtimeCost(long open) {
    long sum = 0;
    for (int i = 0; i < shifts.overtime().size(); i++) {
      sum += (open >> i & 1) == 0 ? 0 : overtimeCharge(shifts.overtime().get(i));
    }
    return sum;
  }

  /** OVERTIME of one shift. */
  long overtimeCharge(ShiftTimes.Worked window) {
    return charges.overtime(shifts.perHour(window), window.to() - window.from());
  }

  /** UNPLACED of a job. */
  public long unplacedCost(int job) {
    return charges.unplaced(job);
  }

  /** MOVED of a run. */
  long moved(int job, int press, int runStart) {
    int before = jobs.earlierPress[job];
    if (before < 0) {
      return 0;
    }
    boolean stays = before == press && Math.abs(runStart - jobs.earlierStart[job]) <= moveTolerance;
    return stays ? 0 : problem.arranged().terms().movedRun();
  }

  /** From when on a run of a job has the time that it had in an earlier plan. */
  int sameTimeFrom(int job) {
    return jobs.earlierStart[job] - moveTolerance;
  }

  /** The press of a job in an earlier plan; -1 when it had none that is still there. */
  public int placeBefore(int job) {
    return jobs.earlierPress[job] == Spans.FAR ? -1 : jobs.earlierPress[job];
  }

  /** Whether a job ran after another in an earlier plan. */
  public boolean ranAfter(int job, int other) {
    return jobs.earlierStart[job] > jobs.earlierStart[other];
  }

  /** Whether a job had a place on a press in an earlier plan, and leaving it has a price. */
  public boolean hadPlace(int job, int press) {
    return jobs.earlierPress[job] == press && problem.arranged().terms().movedRun() > 0;
  }

  /**
   * Overtime shifts that a plan opened, as bits; those that are not there any more are left out.
   */
  public long openBits(List<PlantWide.Opened> opened) {
    long bits = 0;
    for (int i = 0; i < shifts.overtime().size(); i++) {
      ShiftTimes.Worked window = shifts.overtime().get(i);
      for (PlantWide.Opened one : opened) {
        if (one.shift().equals(window.shift().name()) && one.fromMin() == window.from()) {
          bits |= 1L << i;
        }
      }
    }
    return bits;
  }

  /** Opens shifts and holds jobs back as a plan did. */
  public void choices(PlantWide whole, Sequences into) {
    into.open(openBits(whole.opened()));
    for (PlantWide.Held held : whole.held()) {
      int job = job(held.job());
      if (job >= 0) {
        into.holdBehind(job, job(held.behind()));
      }
    }
  }

  /** Overtime shifts that a plan may open, by start. */
  public List<PlantWide.Opened> overtime() {
    return shifts.overtime().stream()
        .map(w -> new PlantWide.Opened(w.shift().name(), w.from(), w.to()))
        .toList();
  }

  /** How many overtime shifts a plan may open. */
  public int overtimeShifts() {
    return shifts.overtime().size();
  }

  /** Rules for changes, a fresh copy for each pass, since its answers are kept in fields. */
  ChangeRules changeRules() {
    return new ChangeRules(problem, names);
  }
}
