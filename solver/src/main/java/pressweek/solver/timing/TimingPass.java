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
  private static final int[] NOTHING = new int[0];

  private final WeekTables week;
  private final Charges charges;
  private final PressStates states;
  private final Shared shared;
  private final Looker looker;
  private final PressHeap heap;
  private final Recorder recorder;
  private final ChangeRules changes;

  private final Waits waits;

  private long cost;
  private long broken;
  private long limit;
  private int lastEnd;
  private int latest;

  private TimingPass(WeekTables week, Crew crew, Recorder recorder, List<MoldAway.Kept> kept) {
    this.week = week;
    this.recorder = recorder;
    charges = week.charges;
    states = new PressStates(week);
    shared = new Shared(week, crew, states, kept);
    looker = new Looker(week, states, shared, recorder);
    heap = new PressHeap(week.presses);
    changes = shared.changes;
    waits = new Waits(week, states);
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
    return run(sequences, Long.MAX_VALUE);
  }

  /**
   * The same, given up as soon as the cost is more than a limit: the answer is then some cost above
   * the limit.
   */
  public long run(Sequences sequences, long most) {
    start(sequences.open);
    limit = most;
    waits.begin(sequences.behind);
    for (int p = 0; p < week.presses; p++) {
      if (sequences.size[p] > 0 && week.running[p] == sequences.jobs[p][0]) {
        heap.add(p, week.start);
      }
    }
    carryOut(sequences, true);
    for (int p = 0; p < week.presses; p++) {
      if (states.position[p] < sequences.size[p]) {
        heap.add(p, states.free[p]);
      }
    }
    carryOut(sequences, false);
    while (waits.any() && cost <= limit) {
      int p = waits.giveUp();
      int job = sequences.jobs[p][states.position[p]];
      if (waits.link(job) >= 0) {
        recorder.push(Cause.LINKED, week.jobs.jobs.get(waits.link(job)).id(), week.end);
        recorder.keep(p, recorder.current());
        leaveOut(p, job, Cause.HORIZON);
        settled(p, sequences, latest);
      } else {
        waits.release(p, job);
        heap.add(p, Math.max(latest, states.free[p]));
      }
      carryOut(sequences, false);
    }
    return cost + week.charges.close(lastEnd);
  }

  /** Carries out what the presses in the heap have before them, the first job of each or all. */
  private void carryOut(Sequences sequences, boolean firstOnly) {
    while (!heap.isEmpty() && cost <= limit) {
      int p = heap.press();
      int job = sequences.jobs[p][states.position[p]];
      int clock = heap.time();
      latest = clock;
      if (!firstOnly && waits.mustWait(p, job)) {
        heap.remove();
        continue;
      }
      int next = step(p, job, clock);
      while (next > clock && next < heap.nextTime()) {
        clock = next;
        next = step(p, job, clock);
      }
      latest = clock;
      if (next >= 0) {
        heap.later(next);
      } else {
        heap.remove();
        if (firstOnly) {
          states.position[p]++;
        } else {
          settled(p, sequences, clock);
        }
      }
    }
  }

  /** The job before a press has begun or been left out: goes on to its next, and to who waited. */
  private void settled(int press, Sequences sequences, int clock) {
    int job = sequences.jobs[press][states.position[press]++];
    if (states.position[press] < sequences.size[press]) {
      heap.add(press, Math.max(clock, states.free[press]));
    }
    if (waits.any()) {
      for (int p = waits.next(job); p >= 0; p = waits.next(job)) {
        int at = Math.max(clock, states.free[p]);
        if (recorder.on() && states.free[p] < at) {
          String name = week.jobs.jobs.get(job).id();
          recorder.keep(p, List.of(new Recorder.Push(waits.cause(p), name, at)));
        }
        heap.add(p, at);
      }
    }
  }

  /**
   * Minutes by which promised runs are later than they may be, and a large number for each that is
   * not placed at all.
   */
  public long broken() {
    return broken;
  }

  void start(long open) {
    cost = week.nowhereCost + week.overtimeCost(open);
    limit = Long.MAX_VALUE;
    broken = 0;
    lastEnd = week.start;
    states.reset();
    shared.reset(open);
    heap.clear();
    waits.begin(NOTHING);
  }

  /** Whether a job has neither begun nor been left out. */
  boolean isOpen(int job) {
    return states.jobEnd[job] < 0;
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
    if (look.start > clock) {
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
    int service = look.service ? shared.services.minutes(mold) : 0;
    int wake = Math.max(states.moldFree[mold], look.start - minutes - service);
    if (wake > clock) {
      return wake;
    }
    Spans hours = shared.hours(holder);
    int from = Math.max(states.moldFree[mold], states.free[holder]);
    int begun = minutes == 0 ? from : shared.setters().start(hours, from, minutes);
    if (begun >= week.end) {
      leaveOut(press, job, Cause.MOLD);
      return -1;
    }
    if (begun > clock) {
      recorder.push(Cause.MOLD, "", begun);
      return begun;
    }
    int end = hours.finish(begun, minutes);
    if (minutes > 0) {
      shared.setters().take(end, minutes);
      cost += charges.change(minutes);
      recorder.add(new Recorder.TakenOff(holder, mold, begun, end, minutes));
    }
    endCampaign(holder, mold);
    shared.things.leave(holder, end);
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
    recordStart(press, job, look);
    if (look.minutes > 0) {
      Spans hours = shared.hours(press);
      shared.setters().start(hours, look.start, look.minutes);
      shared.setters().take(look.changeEnd, look.minutes);
      if (look.exchanged && shared.inspectors().checked()) {
        shared.inspectors().take(hours, look.start, look.minutes, look.changeEnd);
      }
      cost += charges.change(look.minutes);
    }
    cost += charges.purge(jobs.material[job], look.purgeG);
    setUp(press, job, look);
    boolean clear = states.cleared[press] || (look.kinds & ChangeRules.FOOD) != 0;
    states.cleared[press] = jobs.food[job] && clear;
    states.free[press] = look.runEnd;
    states.lastEnd[press] = look.runEnd;
    states.jobEnd[job] = look.runEnd;
    lastEnd = Math.max(lastEnd, look.runEnd);
    shared.operators().take(press, look.runEnd, jobs.operators[option]);
    for (int t = jobs.firstTake[option]; t < jobs.firstTake[option + 1]; t++) {
      int pieces = looker.pieces(t, look.exchanged);
      shared.stock.take(jobs.takeComponent[t], pieces, job, look.runStart);
    }
    if (look.exchanged) {
      cost += charges.startUp(jobs.material[job], jobs.option[option].making().startupGrams());
    }
    cost += week.pressRate[option] + week.keptPress[option];
    cost += charges.late(job, look.runEnd + jobs.after[job]);
    cost += week.moved(job, press, look.runStart);
    if (week.promised[job] >= 0) {
      broken += Math.max(0, look.runStart - week.promised[job] - week.moveTolerance);
    }
  }

  /** Mold, set, material and dryer of a press become those of the job. */
  private void setUp(int press, int job, Look look) {
    JobTable jobs = week.jobs;
    int option = look.option;
    int mold = jobs.mold[option];
    ChangeRules.State setup = states.setup[press];
    if (shared.things.any()) {
      if (setup.tooling != jobs.tooling[option] || setup.mold != mold) {
        shared.things.leave(press, look.changeEnd);
      }
      if (look.giver >= 0) {
        states.setup[look.giver].tooling = 0;
      }
      shared.things.use(press, mold, look.runEnd);
    }
    if (setup.mold != mold) {
      if (setup.mold >= 0) {
        endCampaign(press, setup.mold);
        states.moldOn[setup.mold] = -1;
        int off = shared.hours(press).finish(look.start, changes.dismountMin(setup.mold));
        states.moldFree[setup.mold] = Math.min(off, look.changeEnd);
      }
      shared.campaigns.begin(press);
    }
    int startup = look.exchanged ? jobs.startup[option] : 0;
    shared.campaigns.run(press, jobs.run[option] + startup);
    int shots = jobs.shots[option] + (look.exchanged ? jobs.startupShots[option] : 0);
    shared.services.make(mold, shots, look.service);
    if (look.dryer >= 0) {
      shared.dryers.take(look.dryer, jobs.material[job], look.runStart, look.runEnd);
    }
    setup.mold = mold;
    setup.tooling = jobs.tooling[option];
    setup.material = jobs.material[job];
    states.moldOn[mold] = press;
    states.moldFree[mold] = look.runEnd;
  }

  private void endCampaign(int press, int mold) {
    Campaigns campaigns = shared.campaigns;
    int missing = campaigns.charged() ? campaigns.missing(press) : 0;
    if (missing > 0) {
      cost += campaigns.charge(missing);
      recorder.add(new Recorder.ShortCampaign(press, mold, campaigns.minutes(press), missing));
    }
    campaigns.end(press);
  }

  private void recordStart(int press, int job, Look look) {
    if (recorder.on()) {
      ChangeRules.State setup = states.setup[press];
      int dryFrom =
          look.dryer < 0
              ? 0
              : shared.dryers.dryingFrom(look.dryer, week.jobs.material[job], look.runStart);
      recorder.add(
          new Recorder.Started(
              press,
              job,
              look.option,
              new Recorder.Was(setup.mold, setup.tooling, setup.material, states.free[press]),
              new Recorder.Change(look.minutes, look.purgeG, look.kinds, look.exchanged),
              new Recorder.Times(look.start, look.changeEnd, look.runStart, look.runEnd),
              recorder.pushes(press),
              new Recorder.Dried(look.dryer, dryFrom)));
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
    states.jobEnd[job] = Spans.FAR;
    boolean fixed = week.promised[job] >= 0 || week.running[press] == job;
    broken += fixed ? 1_000_000 : 0;
    if (recorder.on()) {
      recorder.add(new Recorder.LeftOut(press, job, cause, recorder.pushes(press)));
    }
  }
}
