package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pressweek.data.problem.Rates;

/**
 * A rough value by which a search sorts out poor moves: each press is timed by itself ({@link
 * PressWalk}); a mold on two presses at once and a component that is not in the house yet are
 * priced by the minute. Only what a move touches is timed anew. It decides only where it agrees
 * with the timing pass: what it lets through goes through that.
 */
public final class PressModel implements Valuation {
  /** Price of a minute for which a mold or a component is missing, in minutes of change. */
  private static final int SHORTAGE_PRICE = 1;

  private static final long TOO_MUCH = Long.MAX_VALUE / 2;

  private final WeekTables week;
  private final JobTable jobs;
  private final PressWalk walk;
  private final PressTimes times;
  private final PressTimes before;
  private final int[][] usersOf;
  private final long shortageMinute;
  private final boolean shared;
  private final StockModel stock;

  /** The option of a job that runs, -1 for one that does not. */
  private final int[] runs;

  private final Sequences kept;

  /** Before each place of a press: when it is free, what is in it, what the places before cost. */
  private final int[][] free;

  private final int[][] inside;
  private final long[][] spent;

  private final int[] walked;
  private int walkedCount;

  /** When the touched presses come free at the end of the week. */
  private final int[] last = new int[2];

  private long total;
  private long openCost;

  /** A model of a week. */
  public PressModel(WeekTables week) {
    this.week = week;
    jobs = week.jobs;
    int n = week.jobCount();
    walk = new PressWalk(week);
    times = new PressTimes(n);
    before = new PressTimes(n);
    runs = new int[n];
    stock = new StockModel(week);
    kept = new Sequences(week.presses, n);
    free = new int[week.presses][n + 1];
    inside = new int[week.presses][n + 1];
    spent = new long[week.presses][n + 1];
    walked = new int[n];
    Rates rates = week.problem.plant().rates();
    shortageMinute = Math.max(1, SHORTAGE_PRICE * rates.changeHour() / 60);
    usersOf = users();
    shared = stock.any() || Arrays.stream(usersOf).anyMatch(u -> u.length > 1);
  }

  /**
   * Prices the time of setters, whom presses share and the model does not see.
   *
   * @param times what a minute of a change costs more, as a multiple of CHANGE
   */
  public void setterPrice(double times) {
    walk.setterPrice(times);
  }

  /** Jobs that may run in a mold; none for a mold that only one press can take. */
  private int[][] users() {
    List<List<Integer>> lists = new ArrayList<>();
    week.names.molds().forEach(m -> lists.add(new ArrayList<>()));
    int[] only = new int[lists.size()];
    Arrays.fill(only, -1);
    for (int j = 0; j < week.jobCount(); j++) {
      for (int p = 0; p < week.presses; p++) {
        for (int o = jobs.first(j, p); o < jobs.last(j, p); o++) {
          int mold = jobs.mold[o];
          only[mold] = only[mold] == -1 || only[mold] == p ? p : -2;
          List<Integer> list = lists.get(mold);
          if (list.isEmpty() || list.get(list.size() - 1) != j) {
            list.add(j);
          }
        }
      }
    }
    int[][] out = new int[only.length][];
    for (int mold = 0; mold < out.length; mold++) {
      out[mold] =
          only[mold] == -2
              ? lists.get(mold).stream().mapToInt(Integer::intValue).toArray()
              : new int[0];
    }
    return out;
  }

  @Override
  public long keep(Sequences sequences) {
    return keepAll(sequences, null);
  }

  /** The same, each job waiting as long as it does in a pass that has kept the same sequences. */
  public long keep(Sequences sequences, TimingPass pass) {
    return keepAll(sequences, pass.steps().states);
  }

  private long keepAll(Sequences sequences, @Nullable PressStates states) {
    walk.begin(sequences.open, states);
    openCost = week.nowhereCost + week.overtimeCost(sequences.open);
    Arrays.fill(times.press, -1);
    Arrays.fill(runs, -1);
    stock.clear();
    total = openCost;
    for (int p = 0; p < week.presses; p++) {
      total += walkAll(sequences, p, states);
    }
    long missing = 0;
    for (int p = 0; p < week.presses; p++) {
      for (int i = 0; i < sequences.size[p]; i++) {
        missing += enter(sequences.jobs[p][i]);
      }
      System.arraycopy(sequences.jobs[p], 0, kept.jobs[p], 0, sequences.size[p]);
      kept.size[p] = sequences.size[p];
    }
    total += (missing + stock.renew(runs, times.runStart)) * shortageMinute;
    return total + close();
  }

  private long walkAll(Sequences sequences, int p, @Nullable PressStates states) {
    walk.atStart(p);
    long sum = 0;
    for (int i = 0; i < sequences.size[p]; i++) {
      int job = sequences.jobs[p][i];
      note(p, i, sum);
      long cost = walk.place(p, job, i == 0);
      if (states != null) {
        walk.learn(p, job, states);
        walk.free = free[p][i];
        walk.inside = inside[p][i];
        cost = walk.place(p, job, i == 0);
      }
      sum += cost;
    }
    note(p, sequences.size[p], sum);
    return sum;
  }

  private void note(int p, int place, long sum) {
    free[p][place] = walk.free;
    inside[p][place] = walk.inside;
    spent[p][place] = sum;
  }

  /** CLOSE as it is kept. */
  private long close() {
    int latest = week.start;
    for (int p = 0; p < week.presses; p++) {
      latest = Math.max(latest, free[p][kept.size[p]]);
    }
    return week.charges.close(latest);
  }

  private long closeWith(Touched touched) {
    int latest = week.start;
    for (int p = 0; p < week.presses; p++) {
      int end = free[p][kept.size[p]];
      for (int t = 0; t < touched.count; t++) {
        end = touched.press[t] == p ? last[t] : end;
      }
      latest = Math.max(latest, end);
    }
    return week.charges.close(latest);
  }

  @Override
  public long keep(Sequences sequences, Touched touched) {
    if (touched.count == 0) {
      return keep(sequences);
    }
    total += walkTouched(sequences, touched, TOO_MUCH);
    total += shared ? exchange() * shortageMinute : adopt();
    for (int t = 0; t < touched.count; t++) {
      int p = touched.press[t];
      System.arraycopy(sequences.jobs[p], 0, kept.jobs[p], 0, sequences.size[p]);
      kept.size[p] = sequences.size[p];
      renote(p, Math.min(touched.first[t], kept.size[p]));
    }
    return total + close();
  }

  /** Takes over the times of what was walked where nothing is shared. */
  private long adopt() {
    for (int i = 0; i < walkedCount; i++) {
      times.copy(walk.times, walked[i]);
    }
    return 0;
  }

  private void renote(int p, int from) {
    for (int i = from; i < kept.size[p]; i++) {
      int job = kept.jobs[p][i];
      boolean runs = times.runs(job);
      free[p][i + 1] = runs ? times.end[job] : free[p][i];
      inside[p][i + 1] = runs ? times.option[job] : inside[p][i];
      spent[p][i + 1] = spent[p][i] + times.cost[job];
    }
  }

  @Override
  public long attempt(Sequences sequences, long most, Touched touched, boolean bold) {
    if (touched.count == 0) {
      return Long.MAX_VALUE;
    }
    long delta = walkTouched(sequences, touched, most - total);
    if (delta >= TOO_MUCH) {
      return Long.MAX_VALUE;
    }
    if (shared) {
      for (int i = 0; i < walkedCount; i++) {
        before.copy(times, walked[i]);
      }
      delta += exchange() * shortageMinute;
      for (int i = 0; i < walkedCount; i++) {
        restore(walked[i]);
      }
      stock.renew(runs, times.runStart);
    }
    return total + delta + closeWith(touched);
  }

  private void restore(int job) {
    if (runs[job] >= 0) {
      stock.touch(runs[job]);
    }
    times.copy(before, job);
    runs[job] = times.runs(job) ? times.option[job] : -1;
    if (runs[job] >= 0) {
      stock.touch(runs[job]);
    }
  }

  /**
   * Walks the touched presses as they are in the sequences, each until it is as it was before;
   * answers what that changes, or too much when that is clear on the way.
   */
  private long walkTouched(Sequences after, Touched touched, long spare) {
    walkedCount = 0;
    long delta = 0;
    for (int t = 0; t < touched.count; t++) {
      int p = touched.press[t];
      int first = Math.min(touched.first[t], after.size[p]);
      int moved = after.size[p] - kept.size[p];
      walk.free = free[p][first];
      walk.inside = inside[p][first];
      long sum = 0;
      last[t] = -1;
      for (int i = first; i < after.size[p]; i++) {
        if (i >= touched.end[t]) {
          int was = i - moved;
          long now = delta + sum - (spent[p][was] - spent[p][first]);
          if (walk.free == free[p][was] && walk.inside == inside[p][was]) {
            last[t] = free[p][kept.size[p]];
            sum += spent[p][kept.size[p]] - spent[p][was];
            break;
          }
          if (now > spare && t == touched.count - 1 && walk.free >= free[p][was]) {
            return TOO_MUCH;
          }
        }
        int job = after.jobs[p][i];
        walked[walkedCount++] = job;
        sum += walk.place(p, job, i == 0);
      }
      last[t] = last[t] < 0 ? walk.free : last[t];
      delta += sum - (spent[p][kept.size[p]] - spent[p][first]);
    }
    return delta;
  }

  /** Puts what was walked in the place of what was; answers minutes of shortage more. */
  private long exchange() {
    long more = 0;
    for (int i = 0; i < walkedCount; i++) {
      int job = walked[i];
      if (runs[job] >= 0) {
        more -= overlap(job);
        stock.touch(runs[job]);
        runs[job] = -1;
      }
      times.press[job] = -1;
    }
    for (int i = 0; i < walkedCount; i++) {
      more += enter(walked[i]);
    }
    return more + stock.renew(runs, times.runStart);
  }

  private long enter(int job) {
    times.copy(walk.times, job);
    if (!times.runs(job)) {
      return 0;
    }
    runs[job] = times.option[job];
    stock.touch(runs[job]);
    return overlap(job);
  }

  /** Minutes in which the mold of a job is on another press as well. */
  private long overlap(int job) {
    long sum = 0;
    int mold = jobs.mold[times.option[job]];
    for (int other : usersOf[mold]) {
      if (other != job
          && runs[other] >= 0
          && times.press[other] != times.press[job]
          && jobs.mold[runs[other]] == mold) {
        int from = Math.max(times.begin[job], times.begin[other]);
        sum += Math.max(0, Math.min(times.end[job], times.end[other]) - from);
      }
    }
    return sum;
  }
}
