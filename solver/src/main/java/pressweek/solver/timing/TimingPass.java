package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Cause;
import pressweek.data.problem.Crew;
import pressweek.solver.timing.Recorder.Event;

/**
 * From sequences to clock times. Presses are taken by the time of their next step; the first one
 * starts its next job if press, mold, setter, operators, components, shifts and promises allow,
 * else it is put back to the first time at which they could. So every sequence gives a plan that
 * keeps the hard rules; what cannot start within the horizon is left out and priced. Not for use by
 * several threads.
 *
 * <p>A search keeps sequences ({@link #keep}) and attempts others that differ from them a little
 * ({@link #attempt}): such an attempt goes on from the last snapshot before the first difference.
 */
public final class TimingPass implements Valuation {
  /** Price of a minute by which a promise is broken, thousandths of a cent. */
  private static final long PROMISE_MINUTE = 100_000_000;

  private final WeekTables week;
  private final PressHeap heap;
  private final Recorder recorder;
  private final Waits waits;
  private final Steps steps;
  private final PressStates states;
  private final Kept kept;

  private Follower follower = Follower.NONE;
  private long limit;

  /** The time of the last step; an array of one, so that a snapshot may keep it. */
  private final int[] latest = new int[1];

  private TimingPass(WeekTables week, Crew crew, Recorder recorder, List<MoldAway.Kept> promised) {
    this.week = week;
    this.recorder = recorder;
    states = new PressStates(week);
    steps = new Steps(week, new Shared(week, crew, states, promised), states, recorder);
    heap = new PressHeap(week.presses);
    waits = new Waits(week, states);
    kept = new Kept(week);
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
                mold,
                started.job(),
                started.press(),
                started.times().start() - off,
                started.times().runEnd()));
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
    follower = Follower.NONE;
    limit = Long.MAX_VALUE;
    return fromTheStart(sequences);
  }

  /** What a search compares: avoidable cost and a price on each minute that breaks a promise. */
  public long value(Sequences sequences) {
    return run(sequences) + steps.broken * PROMISE_MINUTE;
  }

  /** The value of sequences that the next attempts differ from. */
  @Override
  public long keep(Sequences sequences) {
    follower = kept;
    limit = Long.MAX_VALUE;
    kept.begin(sequences, steps, this::name);
    fromTheStart(sequences);
    return kept.end(steps) + steps.broken * PROMISE_MINUTE;
  }

  /** The same for sequences that differ only a little from those kept before. */
  @Override
  public long keep(Sequences sequences, Touched touched) {
    Snapshot from = kept.before(sequences, touched);
    if (from == null) {
      return keep(sequences);
    }
    limit = Long.MAX_VALUE;
    kept.restore(from, steps);
    waits.holdBack(sequences.behind);
    kept.beginAt(from, sequences);
    follower = kept;
    carryOut(sequences, false);
    finish(sequences);
    return kept.end(steps) + steps.broken * PROMISE_MINUTE;
  }

  /**
   * The value of sequences that differ from those kept, or a value above the limit when it comes to
   * more than that.
   *
   * @param most the limit
   * @param touched where they differ
   * @param bold gives up as well when what is left would have to cost less than it did
   */
  @Override
  public long attempt(Sequences sequences, long most, Touched touched, boolean bold) {
    limit = most;
    Snapshot from = kept.before(sequences, touched);
    if (from == null) {
      follower = Follower.NONE;
      return fromTheStart(sequences) + steps.broken * PROMISE_MINUTE;
    }
    kept.restore(from, steps);
    waits.holdBack(sequences.behind);
    follower = bold ? kept.trial(sequences, touched, from, most) : Follower.NONE;
    carryOut(sequences, false);
    return finish(sequences) + steps.broken * PROMISE_MINUTE;
  }

  private void name(Snapshot.Changing all) {
    states.name(all);
    steps.shared.name(all);
    waits.name(all);
    heap.name(all);
    all.add(latest);
  }

  private long fromTheStart(Sequences sequences) {
    steps.start(sequences.open);
    heap.clear();
    latest[0] = week.start;
    waits.begin(sequences.behind);
    for (int p = 0; p < week.presses; p++) {
      if (sequences.size[p] > 0 && week.running[p] == sequences.jobs[p][0]) {
        heap.add(p, week.start);
      }
    }
    carryOut(sequences, true);
    if (steps.cost > limit) {
      return steps.cost;
    }
    for (int p = 0; p < week.presses; p++) {
      if (states.position[p] < sequences.size[p]) {
        heap.add(p, states.free[p]);
      }
    }
    follower.opened();
    carryOut(sequences, false);
    return finish(sequences);
  }

  /** Carries out what waits for jobs that never begin; answers the cost. */
  private long finish(Sequences sequences) {
    while (waits.any() && steps.cost <= limit) {
      int p = waits.giveUp();
      int job = sequences.jobs[p][states.position[p]];
      if (waits.link(job) >= 0) {
        recorder.keep(
            p,
            List.of(
                new Recorder.Push(
                    Cause.LINKED, week.jobs.jobs.get(waits.link(job)).id(), week.end)));
        long before = steps.cost;
        steps.leaveOut(p, job, Cause.HORIZON);
        follower.spent(job, steps.cost - before);
        settled(p, sequences, latest[0]);
        if (!follower.settled(p, job, false)) {
          steps.cost = Math.max(steps.cost, limit + 1);
        }
      } else {
        waits.release(p, job);
        heap.add(p, Math.max(latest[0], states.free[p]));
      }
      carryOut(sequences, false);
    }
    return steps.cost + week.charges.close(steps.lastEnd);
  }

  /** Carries out what the presses in the heap have before them, the first job of each or all. */
  private void carryOut(Sequences sequences, boolean firstOnly) {
    while (!heap.isEmpty() && steps.cost <= limit) {
      int p = heap.press();
      if (states.position[p] >= sequences.size[p]) {
        heap.remove();
        continue;
      }
      int job = sequences.jobs[p][states.position[p]];
      int clock = heap.time();
      latest[0] = clock;
      if (!firstOnly && waits.mustWait(p, job)) {
        heap.remove();
        continue;
      }
      int next = advance(p, job, clock);
      clock = latest[0];
      if (next >= 0) {
        heap.later(next);
        continue;
      }
      heap.remove();
      if (firstOnly) {
        states.position[p]++;
        follower.settled(p, job, true);
      } else {
        settled(p, sequences, clock);
        if (!follower.settled(p, job, false)) {
          steps.cost = Math.max(steps.cost, limit + 1);
          return;
        }
      }
    }
  }

  /** Steps of a press as long as no other comes between; answers when to come back, or -1. */
  private int advance(int press, int job, int from) {
    long before = steps.cost;
    int clock = from;
    int others = heap.nextTime();
    int next = steps.step(press, job, clock, others);
    while (next > clock && next < others) {
      clock = next;
      next = steps.step(press, job, clock, others);
    }
    latest[0] = Math.max(clock, steps.at);
    follower.spent(job, steps.cost - before);
    return next;
  }

  /** The job before a press has begun or been left out: goes on to its next, and to who waited. */
  private void settled(int press, Sequences sequences, int clock) {
    int job = sequences.jobs[press][states.position[press]++];
    if (states.position[press] < sequences.size[press]) {
      heap.add(press, Math.max(clock, states.free[press]));
    }
    while (waits.any()) {
      int p = waits.next(job);
      if (p < 0) {
        return;
      }
      // of changes that start together the earlier press of the list is first to a tooling set
      int at = Math.max(steps.shared.things.any() ? clock + 1 : clock, states.free[p]);
      if (recorder.on() && states.free[p] < at) {
        String name = week.jobs.jobs.get(job).id();
        recorder.keep(p, List.of(new Recorder.Push(waits.cause(p), name, at)));
      }
      heap.add(p, at);
    }
  }

  /**
   * Minutes by which promised runs are later than they may be, and a large number for each that is
   * not placed at all.
   */
  public long broken() {
    return steps.broken;
  }

  /** Whether the last pass left a job out. */
  public boolean isLeftOut(int job) {
    return states.jobEnd[job] >= Spans.FAR;
  }

  Steps steps() {
    return steps;
  }
}
