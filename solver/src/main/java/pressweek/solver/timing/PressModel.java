package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pressweek.data.problem.Rates;
import pressweek.solver.rules.ChangeRules;

/**
 * A rough value by which a search sorts out poor moves: each press is timed by itself, with the
 * same changes and charges as in the timing pass; a mold on two presses at once and a component
 * that is not in the house yet are priced by the minute, people and all else are left out. Only the
 * presses that a move touches are timed anew. It never decides: what it lets through goes through
 * the timing pass.
 */
public final class PressModel implements Valuation {
  /** Price of a minute for which a mold or a component is missing, in minutes of change. */
  private static final int SHORTAGE_PRICE = 1;

  private final WeekTables week;
  private final JobTable jobs;
  private final ChangeRules changes;
  private final ChangeRules.State state = new ChangeRules.State();
  private final int[] componentsReady;
  private final int[][] usersOf;
  private final long moldMinute;
  private WorkTimes times;
  private long openCost;

  /** Of each job: its press, -1 when it is not timed, its option, change and run. */
  private final int[] press;

  private final int[] option;

  /** The option of a job that runs, -1 for one that does not. */
  private final int[] runs;

  private final StockModel stock;
  private final int[] begin;
  private final int[] runStart;
  private final int[] end;
  private final long[] cost;

  private Sequences kept;
  private long total;

  /** A model of a week. */
  public PressModel(WeekTables week) {
    this.week = week;
    jobs = week.jobs;
    changes = week.changeRules();
    int n = week.jobCount();
    press = new int[n];
    option = new int[n];
    runs = new int[n];
    stock = new StockModel(week);
    begin = new int[n];
    runStart = new int[n];
    end = new int[n];
    cost = new long[n];
    componentsReady = new int[n];
    kept = new Sequences(week.presses, n);
    Rates rates = week.problem.plant().rates();
    moldMinute = Math.max(1, SHORTAGE_PRICE * rates.changeHour() / 60);
    usersOf = users();
    ComponentLook look = new ComponentLook(week, new ComponentStock(week));
    for (int j = 0; j < n; j++) {
      int first = week.firstOption(j);
      componentsReady[j] = first < 0 ? 0 : look.ready(first, j, true, week.start);
    }
    times = week.times(0);
  }

  private int[][] users() {
    List<List<Integer>> lists = new ArrayList<>();
    week.names.molds().forEach(m -> lists.add(new ArrayList<>()));
    for (int j = 0; j < week.jobCount(); j++) {
      for (int p = 0; p < week.presses; p++) {
        for (int o = jobs.first(j, p); o < jobs.last(j, p); o++) {
          List<Integer> list = lists.get(jobs.mold[o]);
          if (list.isEmpty() || list.get(list.size() - 1) != j) {
            list.add(j);
          }
        }
      }
    }
    return lists.stream()
        .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  @Override
  public long keep(Sequences sequences) {
    times = week.times(sequences.open);
    openCost = week.nowhereCost + week.overtimeCost(sequences.open);
    Arrays.fill(press, -1);
    Arrays.fill(runs, -1);
    stock.clear();
    total = openCost;
    for (int p = 0; p < week.presses; p++) {
      total += time(sequences, p, 0);
    }
    total += stock.renew(runs, runStart) * moldMinute;
    kept = sequences.copy();
    return total;
  }

  @Override
  public long keep(Sequences sequences, Touched touched) {
    if (touched.count == 0) {
      return keep(sequences);
    }
    total += change(kept, sequences, touched);
    for (int t = 0; t < touched.count; t++) {
      int p = touched.press[t];
      System.arraycopy(sequences.jobs[p], 0, kept.jobs[p], 0, sequences.size[p]);
      kept.size[p] = sequences.size[p];
    }
    return total;
  }

  @Override
  public long attempt(Sequences sequences, long most, Touched touched, boolean bold) {
    if (touched.count == 0) {
      return Long.MAX_VALUE;
    }
    long delta = change(kept, sequences, touched);
    change(sequences, kept, touched);
    return total + delta;
  }

  /** Takes the touched presses out as they were and in as they are; answers what that changes. */
  private long change(Sequences before, Sequences after, Touched touched) {
    long delta = 0;
    for (int t = 0; t < touched.count; t++) {
      int p = touched.press[t];
      for (int i = Math.min(touched.first[t], before.size[p]); i < before.size[p]; i++) {
        delta -= remove(before.jobs[p][i]);
      }
    }
    for (int t = 0; t < touched.count; t++) {
      int p = touched.press[t];
      delta += time(after, p, Math.min(touched.first[t], after.size[p]));
    }
    return delta + stock.renew(runs, runStart) * moldMinute;
  }

  private long remove(int job) {
    long gone = cost[job];
    if (end[job] > begin[job]) {
      gone += overlap(job) * moldMinute;
      stock.touch(option[job]);
      runs[job] = -1;
    }
    press[job] = -1;
    return gone;
  }

  /** Times a press from a place on; answers what its jobs cost. */
  private long time(Sequences sequences, int p, int from) {
    int free = week.start;
    boolean cleared = week.standingCleared[p];
    state.mold = week.standing[p];
    state.tooling = week.standingTooling[p];
    state.material = week.standingMaterial[p];
    int last = from - 1;
    while (last >= 0 && end[sequences.jobs[p][last]] <= begin[sequences.jobs[p][last]]) {
      last--;
    }
    if (last >= 0) {
      int job = sequences.jobs[p][last];
      free = end[job];
      state.mold = jobs.mold[option[job]];
      state.tooling = jobs.tooling[option[job]];
      state.material = jobs.material[job];
      cleared = jobs.food[job];
    }
    long sum = 0;
    for (int i = from; i < sequences.size[p]; i++) {
      int job = sequences.jobs[p][i];
      boolean running = i == 0 && week.running[p] == job;
      sum += place(p, job, free, cleared, running);
      if (end[job] > begin[job]) {
        free = end[job];
        cleared = jobs.food[job];
        state.mold = jobs.mold[option[job]];
        state.tooling = jobs.tooling[option[job]];
        state.material = jobs.material[job];
        sum += overlap(job) * moldMinute;
        runs[job] = option[job];
        stock.touch(option[job]);
      }
    }
    return sum;
  }

  private long place(int p, int job, int free, boolean cleared, boolean running) {
    int o = jobs.first(job, p);
    for (int other = o; other < jobs.last(job, p); other++) {
      o = jobs.mold[other] == state.mold ? other : o;
    }
    option[job] = o;
    press[job] = p;
    boolean clear = jobs.food[job] && !cleared;
    changes.ask(p, state, jobs.mold[o], jobs.tooling[o], jobs.material[job], clear);
    boolean changed = !running && (changes.kinds & ~ChangeRules.FOOD) != 0;
    int minutes = running ? 0 : changes.minutes;
    Spans hours = times.hours[p];
    int ready = running ? week.start : Math.max(componentsReady[job], week.promised[job]);
    int at = Math.max(free, jobs.earliest[job]);
    if (ready > at) {
      at = Math.max(at, hours.startFor(ready, minutes));
    }
    at = hours.next(at);
    int done = at >= Spans.FAR ? Spans.FAR : hours.finish(at, minutes);
    int start = done >= Spans.FAR ? Spans.FAR : hours.next(done);
    boolean forbidden = !running && changes.forbidden(state.material, jobs.material[job]);
    if (start >= week.end || forbidden) {
      begin[job] = free;
      end[job] = free;
      cost[job] = week.charges.unplaced(job);
      return cost[job];
    }
    int run = jobs.run[o] + (changed ? jobs.startup[o] : 0);
    begin[job] = at;
    runStart[job] = start;
    Spans all = jobs.handLoad[o] ? hours : times.running[p];
    end[job] = Math.min(Spans.FAR, all.finish(start, run));
    cost[job] = cost(p, job, minutes, running ? 0 : changes.purgeG, changed);
    return cost[job];
  }

  private long cost(int p, int job, int minutes, int purgeG, boolean changed) {
    int o = option[job];
    long sum = week.charges.change(minutes) + week.charges.purge(jobs.material[job], purgeG);
    if (changed) {
      sum += week.charges.startUp(jobs.material[job], jobs.option[o].making().startupGrams());
    }
    sum += week.pressRate[o] + week.keptPress[o];
    sum += week.charges.late(job, end[job] + jobs.after[job]);
    return sum + week.moved(job, p, runStart[job]);
  }

  /** Minutes in which the mold of a job is on another press as well. */
  private long overlap(int job) {
    long sum = 0;
    int mold = jobs.mold[option[job]];
    for (int other : usersOf[mold]) {
      if (other != job
          && press[other] >= 0
          && press[other] != press[job]
          && jobs.mold[option[other]] == mold) {
        sum += Math.max(0, Math.min(end[job], end[other]) - Math.max(begin[job], begin[other]));
      }
    }
    return sum;
  }
}
