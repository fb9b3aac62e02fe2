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
  private final SetterPool setters;
  private final OperatorLoad operators;
  private final ComponentStock stock;
  private final MoldAway away;
  private final ChangeRules changes;
  private final Recorder recorder;
  private final Look look = new Look();

  Looker(WeekTables week, PressStates states, Shared shared, Recorder recorder) {
    this.week = week;
    this.jobs = week.jobs;
    this.states = states;
    this.setters = shared.setters();
    this.operators = shared.operators();
    this.stock = shared.stock();
    this.away = shared.away();
    this.changes = week.changeRules();
    this.recorder = recorder;
  }

  /** What presses share. */
  record Shared(SetterPool setters, OperatorLoad operators, ComponentStock stock, MoldAway away) {}

  /** Minutes to take a mold off. */
  int dismountMin(int mold) {
    return changes.dismountMin(mold);
  }

  /** Whether a job's resin must not meet what is in the barrel of a press. */
  boolean forbidden(int press, int job) {
    return changes.forbidden(states.setup[press].material, jobs.material[job]);
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
    askChange(press, job, option);
    int free = Math.max(clock, states.free[press]);
    int at = isRunning(press, job) ? free : Math.max(free, jobs.earliest[job]);
    push(Cause.EARLIEST, "", free, at);
    int moldAt = states.moldFree[mold];
    int on = states.moldOn[mold];
    if (on >= 0 && on != press) {
      look.holder = on;
      moldAt += changes.dismountMin(mold);
    }
    if (on != press && moldAt > at) {
      push(Cause.MOLD, mold, at, moldAt);
      at = moldAt;
    }
    settle(press, job, option, at);
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
    boolean clear = jobs.food[job] && !states.cleared[press];
    changes.ask(
        press,
        states.setup[press],
        jobs.mold[option],
        jobs.tooling[option],
        jobs.material[job],
        clear);
    look.minutes = changes.minutes;
    look.purgeG = changes.purgeG;
    look.kinds = changes.kinds;
    look.exchanged = (changes.kinds & ~ChangeRules.FOOD) != 0;
  }

  /** Moves the start on until press, setter, components, mold and operators all agree. */
  private void settle(int press, int job, int option, int from) {
    Spans hours = week.hours[press];
    int run = jobs.run[option] + (look.exchanged ? jobs.startup[option] : 0);
    int ready = componentsReady(option, job, from);
    int at = from;
    while (true) {
      at = place(hours, at, run);
      if (at >= Spans.FAR || look.runStart >= week.end) {
        look.start = Spans.FAR;
        look.runEnd = Spans.FAR;
        return;
      }
      int next = firstObjection(press, job, option, ready);
      if (next <= at) {
        look.start = at;
        return;
      }
      at = next;
    }
  }

  /** Places change and run at the first time with a setter; answers the start, FAR for never. */
  private int place(Spans hours, int from, int run) {
    int i = hours.at(from);
    look.start = Spans.FAR;
    if (i == hours.size()) {
      return Spans.FAR;
    }
    int at = Math.max(from, hours.from(i));
    push(Cause.SHIFT, "", from, at);
    if (look.minutes > 0) {
      int begun = setters.start(hours, at, look.minutes);
      push(Cause.SETTER, "", at, begun);
      if (begun >= Spans.FAR) {
        return Spans.FAR;
      }
      if (begun > at) {
        at = begun;
        i = hours.at(at);
      }
    }
    int changed = look.minutes == 0 ? i : hours.doneIn(i, at, look.minutes);
    if (changed == hours.size()) {
      return Spans.FAR;
    }
    look.changeEnd = hours.doneAt(i, at, look.minutes, changed);
    int running = look.changeEnd < hours.to(changed) ? changed : changed + 1;
    if (running == hours.size()) {
      return Spans.FAR;
    }
    look.runStart = Math.max(look.changeEnd, hours.from(running));
    int done = hours.doneIn(running, look.runStart, run);
    if (done == hours.size()) {
      return Spans.FAR;
    }
    look.runEnd = hours.doneAt(running, look.runStart, run, done);
    look.start = at;
    return at;
  }

  /**
   * A later start when something but the press objects to the present one, otherwise no later than
   * it.
   */
  private int firstObjection(int press, int job, int option, int ready) {
    int start = look.start;
    int mold = jobs.mold[option];
    int there = jobs.expiring[option] ? componentsReady(option, job, look.runStart) : ready;
    if (look.runStart < there) {
      int at = later(press, there);
      pushComponents(option, job, start, at);
      return at;
    }
    if (look.runStart < week.promised[job]) {
      int at = later(press, week.promised[job]);
      push(Cause.PROMISED, "", start, at);
      return at;
    }
    int back = away.back(mold, job, start, look.runEnd);
    if (back > start) {
      push(away.kept(mold, back) ? Cause.PROMISED : Cause.MOLD_AWAY, mold, start, back);
      return back;
    }
    int manned = operators.next(press, look.runStart, look.runEnd, jobs.operators[option]);
    if (manned > look.runStart) {
      int at = later(press, manned);
      push(Cause.OPERATOR, "", start, at);
      return at;
    }
    return start;
  }

  /**
   * The start of the change, later than the present one, after which the run does not start before
   * a time.
   */
  private int later(int press, int time) {
    return Math.max(look.start + 1, week.hours[press].startFor(time, look.minutes));
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
      at = away.back(mold, job, at, at + look.minutes + jobs.run[o]);
      int ready = componentsReady(o, job, at + look.minutes);
      if (ready < Spans.FAR) {
        best = Math.min(best, Math.max(at + look.minutes, ready) - clock);
      }
    }
    return best;
  }

  /**
   * The first start of a run, from a time on where lots expire, at which its components are there.
   */
  private int componentsReady(int option, int job, int from) {
    int ready = 0;
    for (int t = jobs.firstTake[option]; t < jobs.firstTake[option + 1]; t++) {
      int component = jobs.takeComponent[t];
      if (!jobs.expiring[option] || !week.stock.expires(component)) {
        int at = stock.ready(component, pieces(t, look.exchanged));
        if (at > 0) {
          ready = Math.max(ready, at >= Spans.FAR ? Spans.FAR : at + week.insertLead);
        }
      }
    }
    return jobs.expiring[option] ? beforeExpiry(option, job, Math.max(ready, from)) : ready;
  }

  /** The first start from a time on at which all components with a lot that expires are there. */
  private int beforeExpiry(int option, int job, int from) {
    int start = from;
    int before = -1;
    while (before != start && start < Spans.FAR) {
      before = start;
      for (int t = jobs.firstTake[option]; t < jobs.firstTake[option + 1]; t++) {
        if (start < Spans.FAR && week.stock.expires(jobs.takeComponent[t])) {
          start = stock.start(jobs.takeComponent[t], pieces(t, look.exchanged), job, start);
        }
      }
    }
    return start;
  }

  /** Pieces of a take, with start-up pieces after an exchange. */
  int pieces(int take, boolean exchanged) {
    return jobs.takePieces[take] + (exchanged ? jobs.takeStartup[take] : 0);
  }

  private void push(Cause cause, String what, int from, int until) {
    if (until > from) {
      recorder.push(cause, what, until);
    }
  }

  private void push(Cause cause, int mold, int from, int until) {
    if (recorder.on()) {
      push(cause, jobs.option[look.option].mold(), from, until);
    }
  }

  private void pushComponents(int option, int job, int from, int until) {
    if (recorder.on()) {
      StringBuilder names = new StringBuilder();
      for (int t = jobs.firstTake[option]; t < jobs.firstTake[option + 1]; t++) {
        if (isMissing(t, job)) {
          names.append(names.isEmpty() ? "" : "|");
          names.append(week.stock.name(jobs.takeComponent[t]));
        }
      }
      push(Cause.INSERTS, names.toString(), from, until);
    }
  }

  private boolean isMissing(int take, int job) {
    int component = jobs.takeComponent[take];
    int pieces = pieces(take, look.exchanged);
    if (week.stock.expires(component)) {
      return stock.start(component, pieces, job, look.runStart) > look.runStart;
    }
    int at = stock.ready(component, pieces);
    return at > 0 && at + week.insertLead > look.runStart;
  }
}
