package pressweek.solver.timing;

import java.util.List;
import pressweek.data.plan.Cause;
import pressweek.solver.rules.ChangeRules;
import pressweek.solver.rules.Charges;

/** The steps of a pass: what a press does next, and what that costs. */
final class Steps {
  final PressStates states;
  final Shared shared;
  final Looker looker;

  /** Avoidable cost so far. */
  long cost;

  /** Minutes by which promised runs are late, and a million for each that is left out. */
  long broken;

  /** End of the last run so far, or the start of the plan. */
  int lastEnd;

  /** The time of the last step. */
  int at;

  private final WeekTables week;
  private final Charges charges;
  private final ChangeRules changes;
  private final Recorder recorder;

  Steps(WeekTables week, Shared shared, PressStates states, Recorder recorder) {
    this.week = week;
    this.shared = shared;
    this.states = states;
    this.recorder = recorder;
    charges = week.charges;
    changes = shared.changes;
    looker = new Looker(week, states, shared, recorder);
  }

  /** Begins anew with these overtime shifts open. */
  void start(long open) {
    cost = week.nowhereCost + week.overtimeCost(open);
    broken = 0;
    lastEnd = week.start;
    states.reset();
    shared.reset(open);
  }

  /** Whether a job has neither begun nor been left out. */
  boolean isOpen(int job) {
    return states.jobEnd[job] < 0;
  }

  /** One step of a press while nothing is known of the next steps of others. */
  int step(int press, int job, int clock) {
    return step(press, job, clock, clock - 1);
  }

  /**
   * One step of a press: answers a later time to come back to, or -1 when the job has been started
   * or left out.
   *
   * @param others when the next step of another press comes; what is found for a time before that
   *     holds
   */
  int step(int press, int job, int clock, int others) {
    at = clock;
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
      return takeOff(press, job, look, clock, others);
    }
    if (look.start > clock && look.start >= others) {
      return look.start;
    }
    at = Math.max(clock, look.start);
    begin(press, job, look);
    return -1;
  }

  private boolean isFirstOfAll(int press, int job) {
    return week.running[press] == job && states.position[press] == 0;
  }

  /** Takes the mold off the press that holds it when it is time; answers when to come back. */
  private int takeOff(int press, int job, Look look, int clock, int others) {
    int holder = look.holder;
    int mold = week.jobs.mold[look.option];
    int minutes = looker.dismountMin(mold);
    int service = look.service ? shared.services.minutes(mold) : 0;
    int wake = Math.max(states.moldFree[mold], look.start - minutes - service);
    if (wake > clock) {
      return wake;
    }
    Spans hours = shared.hours(holder);
    int idle = Math.max(states.moldFree[mold], states.free[holder]);
    // its set may have been taken until now, and changes of this minute come before dismounts
    if (shared.things.any() && others == clock) {
      return clock + 1;
    }
    int from = shared.things.any() ? Math.max(idle, clock) : idle;
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
    states.mold[holder] = -1;
    states.tooling[holder] = 0;
    states.free[holder] = Math.max(states.free[holder], end);
    return Math.max(end, clock);
  }

  private void begin(int press, int job, Look look) {
    JobTable jobs = week.jobs;
    int option = look.option;
    recordStart(press, job, look);
    if (look.minutes > 0) {
      Spans hours = shared.hours(press);
      shared.setters().take(look.setter, look.changeEnd, look.minutes);
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
    states.jobOption[job] = option;
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
    int before = states.mold[press];
    if (shared.things.any()) {
      if (states.tooling[press] != jobs.tooling[option] || before != mold) {
        shared.things.leave(press, look.changeEnd);
      }
      if (look.giver >= 0) {
        states.tooling[look.giver] = 0;
      }
      shared.things.use(press, mold, look.runEnd);
    }
    if (before != mold) {
      if (before >= 0) {
        endCampaign(press, before);
        states.moldOn[before] = -1;
        int off = shared.hours(press).finish(look.start, changes.dismountMin(before));
        states.moldFree[before] = Math.min(off, look.changeEnd);
      }
      shared.campaigns.begin(press);
    }
    int run = jobs.run[option] + (look.exchanged ? jobs.startup[option] : 0);
    shared.campaigns.run(press, run);
    shared.breakdowns.worked(press, run);
    int shots = jobs.shots[option] + (look.exchanged ? jobs.startupShots[option] : 0);
    shared.services.make(mold, shots, look.service);
    if (look.dryer >= 0) {
      shared.dryers.take(look.dryer, jobs.material[job], look.runStart, look.runEnd);
    }
    states.mold[press] = mold;
    states.tooling[press] = jobs.tooling[option];
    states.material[press] = jobs.material[job];
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
      int dryFrom =
          look.dryer < 0
              ? 0
              : look.running
                  ? look.runStart
                  : shared.dryers.dryingFrom(look.dryer, week.jobs.material[job], look.runStart);
      recorder.add(
          new Recorder.Started(
              press,
              job,
              look.option,
              new Recorder.Was(
                  states.mold[press],
                  states.tooling[press],
                  states.material[press],
                  states.free[press]),
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

  /** Leaves a job out. */
  void leaveOut(int press, int job, Cause cause) {
    cost += charges.unplaced(job);
    states.jobEnd[job] = Spans.FAR;
    boolean fixed = week.promised[job] >= 0 || week.running[press] == job;
    broken += fixed ? 1_000_000 : 0;
    if (recorder.on()) {
      recorder.add(new Recorder.LeftOut(press, job, cause, recorder.pushes(press)));
    }
  }
}
