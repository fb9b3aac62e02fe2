package pressweek.solver.timing;

import pressweek.data.plan.Cause;

/**
 * Places change and run of a job on a press at the first time at which press, people, components,
 * mold, things and dryers all agree; changes nothing but the look.
 */
final class Placing {
  private final WeekTables week;
  private final JobTable jobs;
  private final PressStates states;
  private final Shared shared;
  private final ComponentLook components;
  private final Recorder recorder;
  private final Look look;

  Placing(WeekTables week, PressStates states, Shared shared, Recorder recorder, Look look) {
    this.week = week;
    this.jobs = week.jobs;
    this.states = states;
    this.shared = shared;
    this.recorder = recorder;
    this.look = look;
    components = new ComponentLook(week, shared.stock);
  }

  ComponentLook components() {
    return components;
  }

  /** Moves the start on until all agree. */
  void settle(int press, int job, int option, int from) {
    int planned = jobs.run[option] + (look.exchanged ? jobs.startup[option] : 0);
    int run = planned + shared.breakdowns.repairs(press, planned);
    int ready = components.ready(option, job, look.exchanged, from);
    int at = from;
    if (!recorder.on() && ready > from && !jobs.expiring[option]) {
      at = Math.max(at, shared.hours(press).startFor(ready, look.minutes));
    }
    while (true) {
      at = place(press, option, at, run);
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
  private int place(int press, int option, int from, int run) {
    Spans hours = shared.hours(press);
    int i = hours.at(from);
    look.start = Spans.FAR;
    if (i == hours.size()) {
      return Spans.FAR;
    }
    int at = Math.max(from, hours.from(i));
    push(Cause.SHIFT, "", from, at);
    if (look.minutes > 0) {
      int begun = shared.setters().start(hours, at, look.minutes);
      look.setter = shared.setters().chosen();
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
    look.runEnd = runEnd(press, option, hours, running, run);
    if (look.runEnd >= Spans.FAR) {
      return Spans.FAR;
    }
    look.start = at;
    return at;
  }

  private int runEnd(int press, int option, Spans hours, int span, int run) {
    Spans all = shared.running(press, jobs.handLoad[option]);
    if (all != hours) {
      return all.finish(look.runStart, run);
    }
    int done = hours.doneIn(span, look.runStart, run);
    return done == hours.size() ? Spans.FAR : hours.doneAt(span, look.runStart, run, done);
  }

  /**
   * A later start when something but the press objects to the present one, otherwise no later than
   * it.
   */
  private int firstObjection(int press, int job, int option, int ready) {
    int start = look.start;
    int there =
        jobs.expiring[option]
            ? components.ready(option, job, look.exchanged, look.runStart)
            : ready;
    if (look.runStart < there) {
      int at = later(press, there);
      if (recorder.on()) {
        push(Cause.INSERTS, components.missing(job, look, at), start, at);
      }
      return at;
    }
    int dated = datesObject(press, job, start);
    if (dated > start) {
      return dated;
    }
    int back = shared.away.back(press, jobs.mold[option], job, start, look.runEnd);
    if (back > start) {
      boolean kept = shared.away.kept(jobs.mold[option], back);
      push(kept ? Cause.PROMISED : Cause.MOLD_AWAY, moldName(option), start, back);
      return back;
    }
    int next = thingsObject(press, option, start);
    if (next > start) {
      return next;
    }
    next = readinessObjects(press, job, start);
    if (next > start) {
      return next;
    }
    int manned = shared.operators().next(press, look.runStart, look.runEnd, jobs.operators[option]);
    if (manned > look.runStart) {
      int at = later(press, manned);
      push(Cause.OPERATOR, "", start, at);
      return at;
    }
    return start;
  }

  /** The time that is promised, and the one that is kept. */
  private int datesObject(int press, int job, int start) {
    if (look.runStart < week.promised[job]) {
      int at = later(press, week.promised[job]);
      push(Cause.PROMISED, "", start, at);
      return at;
    }
    if (states.keepsTime(job, press) && look.runStart < week.sameTimeFrom(job)) {
      int at = later(press, week.sameTimeFrom(job));
      push(Cause.CHOICE, "", start, at);
      return at;
    }
    return start;
  }

  /** Tooling sets, devices and the inspector. */
  private int thingsObject(int press, int option, int start) {
    if (shared.things.any() && !look.running) {
      int mold = jobs.mold[option];
      int set = jobs.tooling[option];
      int at = shared.things.toolingAt(press, mold, set, start);
      if (at > start) {
        push(Cause.TOOLING, week.names.toolings().get(set), start, at);
        return at;
      }
      look.giver = shared.things.giver;
      at = shared.things.devicesAt(press, mold, start);
      if (at > start) {
        push(Cause.TOOLING, shared.things.deviceOf(mold), start, at);
        return at;
      }
    }
    if (look.exchanged && look.minutes > 0 && shared.inspectors().checked()) {
      Spans hours = shared.hours(press);
      int at = shared.inspectors().next(hours, start, look.minutes, look.changeEnd);
      if (at > start) {
        int next = Math.max(start + 1, shared.inspectors().startFor(hours, at, look.minutes));
        push(Cause.INSPECTOR, "", start, next);
        return next;
      }
    }
    return start;
  }

  /** Runs that it builds on, and dryers. */
  private int readinessObjects(int press, int job, int start) {
    boolean running = look.running;
    int first = jobs.buildsOn[job];
    if (first >= 0 && !running) {
      int end = states.jobEnd[first];
      int ready = end >= Spans.FAR ? Spans.FAR : end + jobs.rest[job];
      if (look.runStart < ready) {
        int at = later(press, ready);
        push(Cause.LINKED, jobs.jobs.get(first).id(), start, at);
        return at;
      }
    }
    look.dryer = -1;
    if (shared.dryers.needed(press, jobs.material[job])) {
      int ready = shared.dryers.ready(press, jobs.material[job], look.runStart, running);
      look.dryer = shared.dryers.chosen;
      if (look.runStart < ready) {
        int at = later(press, ready);
        push(Cause.DRYER, jobs.jobs.get(job).resin(), start, at);
        return at;
      }
    }
    return start;
  }

  /**
   * The start of the change, later than the present one, after which the run does not start before
   * a time.
   */
  private int later(int press, int time) {
    return Math.max(look.start + 1, shared.hours(press).startFor(time, look.minutes));
  }

  private String moldName(int option) {
    return jobs.option[option].mold();
  }

  private void push(Cause cause, String what, int from, int until) {
    if (until > from) {
      recorder.push(cause, what, until);
    }
  }
}
