package pressweek.solver.timing;

import java.util.List;
import pressweek.data.plan.Cause;
import pressweek.solver.rules.ChangeRules;

/** Finds the earliest that a job can be done on a press; changes nothing. */
final class Looker {
  final Look found = new Look();

  private final WeekTables week;
  private final JobTable jobs;
  private final PressStates states;
  private final Shared shared;
  private final ChangeRules changes;
  private final Recorder recorder;
  private final Look look = new Look();
  private final Placing placing;
  private final ChangeRules.State bare = new ChangeRules.State();
  private final ChangeRules.State standing = new ChangeRules.State();

  Looker(WeekTables week, PressStates states, Shared shared, Recorder recorder) {
    this.week = week;
    this.jobs = week.jobs;
    this.states = states;
    this.shared = shared;
    this.changes = shared.changes;
    this.recorder = recorder;
    placing = new Placing(week, states, shared, recorder, look);
  }

  /** Minutes to take a mold off. */
  int dismountMin(int mold) {
    return changes.dismountMin(mold);
  }

  /** Whether a job's resin must not meet what is in the barrel of a press. */
  boolean forbidden(int press, int job) {
    return changes.forbidden(states.material[press], jobs.material[job]);
  }

  /**
   * Looks at every mold that the job could use on the press and leaves the best in {@link #found}:
   * the run that ends first, then the shorter change. Answers whether there is one that starts
   * within the horizon.
   */
  boolean look(int press, int job, int clock) {
    found.start = Spans.FAR;
    found.runEnd = Spans.FAR;
    List<Recorder.Push> why = List.of();
    int last = jobs.last(job, press);
    for (int o = jobs.first(job, press); o < last; o++) {
      if (week.running[press] == job
          && week.runningMold[press] >= 0
          && jobs.mold[o] != week.runningMold[press]
          && states.position[press] == 0) {
        continue;
      }
      recorder.begin();
      lookAt(press, job, o, clock);
      boolean better =
          look.runEnd < found.runEnd
              || (look.runEnd == found.runEnd && look.minutes < found.minutes);
      if (better && look.start < Spans.FAR || why.isEmpty()) {
        why = recorder.current();
      }
      if (better) {
        found.copy(look);
      }
    }
    recorder.keep(press, why);
    return found.start < Spans.FAR && found.runStart < week.end;
  }

  /**
   * A time before which there is no use in looking: when the only mold that the job could use comes
   * free on another press. The clock itself when that does not hold it up.
   */
  int worthALook(int press, int job, int clock) {
    int option = jobs.first(job, press);
    if (option + 1 != jobs.last(job, press)) {
      return clock;
    }
    int mold = jobs.mold[option];
    return states.moldOn[mold] == press ? clock : Math.max(clock, states.moldFree[mold]);
  }

  private void lookAt(int press, int job, int option, int clock) {
    int mold = jobs.mold[option];
    look.option = option;
    look.holder = -1;
    look.giver = -1;
    look.dryer = -1;
    look.running = isRunning(press, job);
    askChange(press, job, option);
    look.service = serviceDue(press, job, option);
    int free = Math.max(clock, states.free[press]);
    int at = isRunning(press, job) ? free : Math.max(free, jobs.earliest[job]);
    push(Cause.EARLIEST, "", free, at);
    int moldAt = states.moldFree[mold];
    int on = states.moldOn[mold];
    boolean off = on != press || look.service;
    if (on >= 0 && off) {
      look.holder = on;
      moldAt += changes.dismountMin(mold);
    }
    if (off && moldAt > at) {
      push(Cause.MOLD, option, at, moldAt);
      at = moldAt;
    }
    if (look.service) {
      int serviced = Math.max(moldAt, week.start) + shared.services.minutes(mold);
      push(Cause.SERVICE, option, at, serviced);
      at = Math.max(at, serviced);
    }
    placing.settle(press, job, option, at);
  }

  /** Whether the mold needs a service first; a mold on the press is then a mold to mount. */
  private boolean serviceDue(int press, int job, int option) {
    if (isRunning(press, job)) {
      return false;
    }
    int mold = jobs.mold[option];
    int startup = look.exchanged ? jobs.startupShots[option] : 0;
    if (!shared.services.due(mold, jobs.shots[option] + startup)) {
      return false;
    }
    if (states.moldOn[mold] == press) {
      bare.mold = -1;
      bare.tooling = 0;
      bare.material = states.material[press];
      ask(press, bare, job, option);
    }
    return true;
  }

  private boolean isRunning(int press, int job) {
    return week.running[press] == job && states.position[press] == 0;
  }

  private void askChange(int press, int job, int option) {
    if (isRunning(press, job)) {
      look.minutes = 0;
      look.purgeG = 0;
      look.kinds = 0;
      look.exchanged = false;
      return;
    }
    standing.mold = states.mold[press];
    standing.tooling = states.tooling[press];
    standing.material = states.material[press];
    ask(press, standing, job, option);
  }

  private void ask(int press, ChangeRules.State from, int job, int option) {
    boolean clear = jobs.food[job] && !states.cleared[press];
    changes.ask(press, from, jobs.mold[option], jobs.tooling[option], jobs.material[job], clear);
    look.minutes = jobs.changeMin(job, changes.minutes);
    look.purgeG = changes.purgeG;
    look.kinds = changes.kinds;
    look.exchanged = (changes.kinds & ~ChangeRules.FOOD) != 0;
  }

  /**
   * Minutes of change and of waiting for mold and inserts before a job could run on a press,
   * setters and operators apart.
   */
  int setupGuess(int press, int job, int clock) {
    int best = Spans.FAR;
    for (int o = jobs.first(job, press); o < jobs.last(job, press); o++) {
      askChange(press, job, o);
      int mold = jobs.mold[o];
      int on = states.moldOn[mold];
      int at = Math.max(clock, jobs.earliest[job]);
      if (on != press) {
        at = Math.max(at, states.moldFree[mold] + (on >= 0 ? changes.dismountMin(mold) : 0));
      }
      at = shared.away.back(press, mold, job, at, at + look.minutes + jobs.run[o]);
      int ready = placing.components().ready(o, job, look.exchanged, at + look.minutes);
      if (ready < Spans.FAR) {
        best = Math.min(best, Math.max(at + look.minutes, ready) - clock);
      }
    }
    return best;
  }

  /** Pieces of a take, with start-up pieces after an exchange. */
  int pieces(int take, boolean exchanged) {
    return placing.components().pieces(take, exchanged);
  }

  private void push(Cause cause, String what, int from, int until) {
    if (until > from) {
      recorder.push(cause, what, until);
    }
  }

  private void push(Cause cause, int option, int from, int until) {
    if (recorder.on()) {
      push(cause, jobs.option[option].mold(), from, until);
    }
  }
}
