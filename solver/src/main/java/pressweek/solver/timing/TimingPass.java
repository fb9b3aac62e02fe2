package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Cause;
import pressweek.data.problem.Crew;
import pressweek.solver.rules.ChangeRules;
import pressweek.solver.rules.Charges;
import pressweek.solver.timing.Recorder.Event;

/**
 * From sequences to clock times. Presses are taken by the time of their next step; the first one
 * starts its next job if press, mold, setter, operators, components, shifts and promises allow,
 * else it is put back to the first time at which they could. So every sequence gives a plan that
 * keeps the hard rules; what cannot start within the horizon is left out and priced. Not for use by
 * several threads.
 */
public final class TimingPass {
  private final WeekTables week;
  private final Charges charges;
  private final PressStates states;
  private final SetterPool setters;
  private final OperatorLoad operators;
  private final ComponentStock stock;
  private final Looker looker;
  private final PressHeap heap;
  private final Recorder recorder;
  private final ChangeRules changes;

  private long cost;
  private long broken;

  private TimingPass(WeekTables week, Crew crew, Recorder recorder, List<MoldAway.Kept> kept) {
    this.week = week;
    this.recorder = recorder;
    charges = week.charges;
    states = new PressStates(week);
    setters = new SetterPool(week.problem.plant().hours(), crew);
    operators = new OperatorLoad(week.problem.plant().hours(), crew.operatorsChecked(), week.hours);
    stock = new ComponentStock(week);
    MoldAway away = new MoldAway(week.problem, week.names, kept);
    looker = new Looker(week, states, new Looker.Shared(setters, operators, stock, away), recorder);
    heap = new PressHeap(week.presses);
    changes = week.changeRules();
  }

  /** A pass for the search: counts, keeps nothing. */
  public static TimingPass full(WeekTables week) {
    return new TimingPass(week, week.problem.plant().crew(), new Recorder(false), keptMolds(week));
  }

  /** A pass in which there is always a setter and an operator. */
  static TimingPass withoutCrew(WeekTables week) {
    Crew crew = week.problem.plant().crew();
    Crew enough =
        new Crew(
            false, false, crew.setterSharePct(), crew.changeMaySpanGap(), crew.insertLeadMin());
    return new TimingPass(week, enough, new Recorder(false), keptMolds(week));
  }

  /**
   * Times in which molds are kept for promised runs: where those runs fall when nothing else is
   * planned.
   */
  static List<MoldAway.Kept> keptMolds(WeekTables week) {
    Sequences fixed = new Sequences(week.presses, week.jobCount());
    int promises = 0;
    for (int p = 0; p < week.presses; p++) {
      for (int job : week.fixed[p]) {
        fixed.add(p, job);
        promises += week.promised[job] >= 0 ? 1 : 0;
      }
    }
    if (promises == 0) {
      return List.of();
    }
    List<MoldAway.Kept> kept = new ArrayList<>();
    for (Event event : record(week, fixed, List.of())) {
      if (event instanceof Recorder.Started started && week.promised[started.job()] >= 0) {
        int mold = week.jobs.mold[started.option()];
        int off = week.changeRules().dismountMin(mold);
        kept.add(
            new MoldAway.Kept(
                mold, started.job(), started.times().start() - off, started.times().runEnd()));
      }
    }
    return kept;
  }

  private static List<Event> record(
      WeekTables week, Sequences sequences, List<MoldAway.Kept> kept) {
    Recorder recorder = new Recorder(true);
    new TimingPass(week, week.problem.plant().crew(), recorder, kept).run(sequences);
    return recorder.events();
  }

  /** What happens when the sequences are carried out, in the order in which it was fixed. */
  static List<Event> record(WeekTables week, Sequences sequences) {
    return record(week, sequences, keptMolds(week));
  }

  /**
   * Avoidable cost of the sequences, thousandths of a cent; {@link #broken} tells of promises not
   * kept.
   */
  public long run(Sequences sequences) {
    start();
    for (int p = 0; p < week.presses; p++) {
      states.position[p] = 0;
      if (sequences.size[p] > 0 && week.running[p] == sequences.jobs[p][0]) {
        step(p, sequences.jobs[p][0], week.start);
        states.position[p]++;
      }
    }
    for (int p = 0; p < week.presses; p++) {
      if (states.position[p] < sequences.size[p]) {
        heap.add(p, states.free[p]);
      }
    }
    while (!heap.isEmpty()) {
      int p = heap.press();
      int job = sequences.jobs[p][states.position[p]];
      int clock = heap.time();
      int next = step(p, job, clock);
      while (next > clock && next < heap.nextTime()) {
        clock = next;
        next = step(p, job, clock);
      }
      if (next < 0) {
        states.position[p]++;
        next = Math.max(clock, states.free[p]);
      }
      if (states.position[p] < sequences.size[p]) {
        heap.later(next);
      } else {
        heap.remove();
      }
    }
    return cost;
  }

  /**
   * Minutes by which promised runs are later than they may be, and a large number for each that is
   * not placed at all.
   */
  public long broken() {
    return broken;
  }

  void start() {
    cost = week.nowhereCost;
    broken = 0;
    states.reset();
    setters.reset();
    operators.reset();
    stock.reset();
    heap.clear();
  }

  PressStates states() {
    return states;
  }

  Looker looker() {
    return looker;
  }

  long cost() {
    return cost;
  }

  /**
   * One step of a press: answers a later time to come back to, or -1 when the job has been started
   * or left out.
   */
  int step(int press, int job, int clock) {
    if (looker.forbidden(press, job) && !isFirstOfAll(press, job)) {
      leaveOut(press, job, Cause.NEIGHBOUR);
      return -1;
    }
    int worth = looker.worthALook(press, job, clock);
    if (worth > clock && worth < week.end && !isFirstOfAll(press, job)) {
      recordMold(press, job, worth);
      return worth;
    }
    if (!looker.look(press, job, clock)) {
      leaveOut(press, job, Cause.HORIZON);
      return -1;
    }
    Look look = looker.found;
    if (look.holder >= 0) {
      return takeOff(press, job, look, clock);
    }
    if (look.start > clock && !isFirstOfAll(press, job)) {
      return look.start;
    }
    begin(press, job, look);
    return -1;
  }

  private boolean isFirstOfAll(int press, int job) {
    return week.running[press] == job && states.position[press] == 0;
  }

  /** Takes the mold off the press that holds it when it is time; answers when to come back. */
  private int takeOff(int press, int job, Look look, int clock) {
    int holder = look.holder;
    int mold = week.jobs.mold[look.option];
    int minutes = looker.dismountMin(mold);
    int wake = Math.max(states.moldFree[mold], look.start - minutes);
    if (wake > clock) {
      return wake;
    }
    int from = Math.max(states.moldFree[mold], states.free[holder]);
    int begun = minutes == 0 ? from : setters.start(week.hours[holder], from, minutes);
    if (begun >= week.end) {
      leaveOut(press, job, Cause.MOLD);
      return -1;
    }
    if (begun > clock) {
      recorder.push(Cause.MOLD, "", begun);
      return begun;
    }
    int end = week.hours[holder].finish(begun, minutes);
    if (minutes > 0) {
      setters.take(end, minutes);
      cost += charges.change(minutes);
      recorder.add(new Recorder.TakenOff(holder, mold, begun, end, minutes));
    }
    states.moldOn[mold] = -1;
    states.moldFree[mold] = end;
    states.setup[holder].mold = -1;
    states.setup[holder].tooling = 0;
    states.free[holder] = Math.max(states.free[holder], end);
    return Math.max(end, clock);
  }

  private void begin(int press, int job, Look look) {
    JobTable jobs = week.jobs;
    int option = look.option;
    int mold = jobs.mold[option];
    ChangeRules.State setup = states.setup[press];
    recordStart(press, job, look);
    if (look.minutes > 0) {
      setters.start(week.hours[press], look.start, look.minutes);
      setters.take(look.changeEnd, look.minutes);
      cost += charges.change(look.minutes);
    }
    cost += charges.purge(jobs.material[job], look.purgeG);
    if (setup.mold != mold && setup.mold >= 0) {
      states.moldOn[setup.mold] = -1;
      int off = week.hours[press].finish(look.start, changes.dismountMin(setup.mold));
      states.moldFree[setup.mold] = Math.min(off, look.changeEnd);
    }
    setup.mold = mold;
    setup.tooling = jobs.tooling[option];
    setup.material = jobs.material[job];
    states.moldOn[mold] = press;
    states.moldFree[mold] = look.runEnd;
    boolean clear = states.cleared[press] || (look.kinds & ChangeRules.FOOD) != 0;
    states.cleared[press] = jobs.food[job] && clear;
    states.free[press] = look.runEnd;
    operators.take(press, look.runEnd, jobs.operators[option]);
    for (int t = jobs.firstTake[option]; t < jobs.firstTake[option + 1]; t++) {
      int pieces = looker.pieces(t, look.exchanged);
      stock.take(jobs.takeComponent[t], pieces, job, look.runStart);
    }
    if (look.exchanged) {
      cost += charges.startUp(jobs.material[job], jobs.option[option].making().startupGrams());
    }
    cost += week.pressRate[option] + week.keptPress[option];
    cost += charges.late(job, look.runEnd + jobs.after[job]);
    if (week.promised[job] >= 0) {
      broken += Math.max(0, look.runStart - week.promised[job] - week.moveTolerance);
    }
  }

  private void recordStart(int press, int job, Look look) {
    if (recorder.on()) {
      ChangeRules.State setup = states.setup[press];
      recorder.add(
          new Recorder.Started(
              press,
              job,
              look.option,
              new Recorder.Was(setup.mold, setup.tooling, setup.material, states.free[press]),
              new Recorder.Change(look.minutes, look.purgeG, look.kinds, look.exchanged),
              new Recorder.Times(look.start, look.changeEnd, look.runStart, look.runEnd),
              recorder.pushes(press)));
    }
  }

  private void recordMold(int press, int job, int until) {
    if (recorder.on()) {
      String mold = week.jobs.option[week.jobs.first(job, press)].mold();
      recorder.keep(press, List.of(new Recorder.Push(Cause.MOLD, mold, until)));
    }
  }

  private void leaveOut(int press, int job, Cause cause) {
    cost += charges.unplaced(job);
    boolean fixed = week.promised[job] >= 0 || week.running[press] == job;
    broken += fixed ? 1_000_000 : 0;
    if (recorder.on()) {
      recorder.add(new Recorder.LeftOut(press, job, cause, recorder.pushes(press)));
    }
  }
}
