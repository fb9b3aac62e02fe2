package pressweek.solver.timing;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Times one press after another by itself, with the same changes and charges as in the timing pass:
 * people, molds on other presses and all else that presses share are left out.
 */
final class PressWalk {
  /** Times of the jobs that were walked last. */
  final PressTimes times;

  /**
   * Working minutes for which a job waits for what presses share, as a pass has found it; the job
   * takes them along.
   */
  final int[] wait;

  /** The mold in which a job runs, as a pass has found it, or -1. */
  private final int[] mold;

  /** From when on a job finds no place, as a pass has found it. */
  private final int[] barred;

  /** When the press came free after the last place that was walked. */
  int free;

  /** What was in the press then, as {@link PairChanges} numbers it. */
  int inside;

  private final WeekTables week;
  private final JobTable jobs;
  private final PairChanges changes;
  private final int[] componentsReady;
  private WorkTimes hours;

  PressWalk(WeekTables week) {
    this.week = week;
    jobs = week.jobs;
    changes = new PairChanges(week);
    int n = week.jobCount();
    times = new PressTimes(n);
    wait = new int[n];
    barred = new int[n];
    mold = new int[n];
    componentsReady = new int[n];
    ComponentLook look = new ComponentLook(week, new ComponentStock(week));
    for (int j = 0; j < n; j++) {
      int first = week.firstOption(j);
      componentsReady[j] = first < 0 ? 0 : look.ready(first, j, true, week.start);
    }
    hours = week.times(0);
  }

  /** Begins anew with these overtime shifts open, and with the molds that a pass chose. */
  void begin(long open, @Nullable PressStates states) {
    hours = week.times(open);
    Arrays.fill(wait, 0);
    Arrays.fill(barred, Spans.FAR);
    Arrays.fill(mold, -1);
    for (int j = 0; states != null && j < mold.length; j++) {
      if (states.jobEnd[j] >= 0 && states.jobEnd[j] < Spans.FAR) {
        mold[j] = jobs.mold[states.jobOption[j]];
      }
    }
  }

  /** See {@link PairChanges#setterPrice}. */
  void setterPrice(double times) {
    changes.setterPrice(times);
  }

  /** Stands before the first place of a press. */
  void atStart(int press) {
    free = week.start;
    inside = changes.standing(press);
  }

  /** Times a job after what was walked before; answers what it costs. */
  long place(int p, int job, boolean first) {
    boolean running = first && week.running[p] == job;
    int o = option(p, job);
    times.option[job] = o;
    times.press[job] = p;
    times.begin[job] = free;
    times.end[job] = free;
    changes.ask(p, inside, o, job);
    if (!running && changes.forbidden) {
      return leaveOut(job);
    }
    int minutes = running ? 0 : changes.minutes;
    Spans press = hours.hours[p];
    int at = start(press, job, minutes, running);
    int done = at >= Spans.FAR ? Spans.FAR : press.finish(at, minutes);
    int start = done >= Spans.FAR ? Spans.FAR : press.next(done);
    if (start >= week.end || at >= barred[job]) {
      return leaveOut(job);
    }
    int run = jobs.run[o] + (changes.changed && !running ? jobs.startup[o] : 0);
    Spans all = jobs.handLoad[o] ? press : hours.running[p];
    int end = Math.min(Spans.FAR, all.finish(start, run));
    times.begin[job] = at;
    times.runStart[job] = start;
    times.end[job] = end;
    long sum = running ? 0 : changes.cost;
    sum += week.pressRate[o] + week.keptPress[o];
    sum += week.charges.late(job, end + jobs.after[job]) + week.moved(job, p, start);
    times.cost[job] = sum;
    if (end > at) {
      free = end;
      inside = o;
    }
    return sum;
  }

  /** The option whose mold is in the press, else the one that a pass chose, else the first. */
  private int option(int p, int job) {
    int o = jobs.first(job, p);
    int last = jobs.last(job, p);
    if (last - o == 1) {
      return o;
    }
    int inPress = changes.mold(inside);
    int chosen = o;
    for (int other = o; other < last; other++) {
      if (jobs.mold[other] == inPress) {
        return other;
      }
      chosen = jobs.mold[other] == mold[job] ? other : chosen;
    }
    return chosen;
  }

  private int start(Spans press, int job, int minutes, boolean running) {
    int ready = running ? week.start : Math.max(componentsReady[job], week.promised[job]);
    int at = Math.max(free, jobs.earliest[job]);
    if (ready > at) {
      at = Math.max(at, press.startFor(ready, minutes));
    }
    at = press.next(at);
    return wait[job] == 0 || at >= Spans.FAR ? at : press.next(press.finish(at, wait[job]));
  }

  private long leaveOut(int job) {
    times.cost[job] = week.charges.unplaced(job);
    return times.cost[job];
  }

  /**
   * Learns how long a job that was walked last has to wait, so that its run ends then, or that it
   * finds no place.
   */
  void learn(int p, int job, PressStates states) {
    int end = states.jobEnd[job];
    if (times.runs(job) && end >= Spans.FAR) {
      barred[job] = times.begin[job];
    } else if (times.runs(job)) {
      Spans press = hours.hours[p];
      wait[job] = Math.max(0, press.workBefore(end) - press.workBefore(times.end[job]));
    }
  }
}
