package pressweek.solver.timing;

import java.util.Arrays;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What a pass over the sequences of a search gave: what each job cost, when each press came free,
 * and snapshots on the way.
 */
final class Kept implements Follower {
  private static final int SNAPSHOTS = 24;

  private final WeekTables week;
  private final long[] jobCost;

  /** How many jobs had been settled when a job was, itself counted. */
  private final int[] order;

  /** When a press came free after its job at a place. */
  private final int[][] freeAfter;

  private final int[] size;
  private final int stride;
  private final Snapshot[] snapshots = new Snapshot[SNAPSHOTS + 2];
  private final Trial trial;
  private Snapshot.Changing changing = new Snapshot.Changing();
  private int count;
  private int settled;
  private long total;
  private long open;
  private boolean any;
  private @Nullable Steps steps;

  Kept(WeekTables week) {
    this.week = week;
    int n = week.jobCount();
    jobCost = new long[n];
    order = new int[n];
    freeAfter = new int[week.presses][n];
    size = new int[week.presses];
    trial = new Trial(week);
    stride = Math.max(2, (n + SNAPSHOTS - 1) / SNAPSHOTS);
  }

  /** Begins to keep a pass over sequences. */
  void begin(Sequences sequences, Steps of, Consumer<Snapshot.Changing> name) {
    steps = of;
    if (!any || open != sequences.open) {
      of.start(sequences.open);
      changing = new Snapshot.Changing();
      name.accept(changing);
    }
    open = sequences.open;
    any = true;
    count = 0;
    settled = 0;
    Arrays.fill(jobCost, 0);
    System.arraycopy(sequences.size, 0, size, 0, size.length);
  }

  long end(Steps of) {
    total = of.cost;
    return of.cost + week.charges.close(of.lastEnd);
  }

  @Override
  public void spent(int job, long amount) {
    jobCost[job] += amount;
  }

  @Override
  public boolean settled(int press, int job, boolean running) {
    Steps of = java.util.Objects.requireNonNull(steps);
    order[job] = ++settled;
    freeAfter[press][of.states.position[press] - 1] = of.states.free[press];
    if (!running && settled % stride == 0 && count < snapshots.length) {
      save(of);
    }
    return true;
  }

  @Override
  public void opened() {
    save(java.util.Objects.requireNonNull(steps));
  }

  private void save(Steps of) {
    Snapshot snapshot = snapshots[count];
    if (snapshot == null) {
      snapshot = new Snapshot();
      snapshots[count] = snapshot;
    }
    count++;
    snapshot.save(changing);
    snapshot.cost = of.cost;
    snapshot.broken = of.broken;
    snapshot.lastEnd = of.lastEnd;
    snapshot.settled = settled;
    snapshot.draws = of.shared.stock.drawn();
    if (snapshot.jobCost.length == 0) {
      snapshot.jobCost = new long[jobCost.length];
    }
    System.arraycopy(jobCost, 0, snapshot.jobCost, 0, jobCost.length);
  }

  /** The last snapshot before sequences differ; null when there is none. */
  @Nullable Snapshot before(Sequences sequences, Touched touched) {
    if (touched.count == 0 || sequences.open != open) {
      return null;
    }
    int latest = Integer.MAX_VALUE;
    for (int t = 0; t < touched.count; t++) {
      int p = touched.press[t];
      int first = touched.first[t];
      if (size[p] <= (week.running[p] >= 0 ? 1 : 0)) {
        return null;
      }
      latest = first == 0 ? 0 : Math.min(latest, order[sequences.jobs[p][first - 1]] - 1);
    }
    int i = count - 1;
    while (i > 0 && snapshots[i].settled > latest) {
      i--;
    }
    return i < 0 ? null : snapshots[i];
  }

  void restore(Snapshot from, Steps of) {
    of.shared.work(open);
    from.restore(changing);
    of.cost = from.cost;
    of.broken = from.broken;
    of.lastEnd = from.lastEnd;
    of.shared.stock.draw(from.draws);
  }

  /** Goes on from a snapshot to keep other sequences. */
  void beginAt(Snapshot from, Sequences sequences) {
    int i = 0;
    while (snapshots[i] != from) {
      i++;
    }
    count = i + 1;
    settled = from.settled;
    System.arraycopy(from.jobCost, 0, jobCost, 0, jobCost.length);
    System.arraycopy(sequences.size, 0, size, 0, size.length);
  }

  /** A follower of an attempt that goes on from a snapshot. */
  Follower trial(Sequences sequences, Touched touched, Snapshot from, long most) {
    trial.begin(sequences, touched, from, most);
    return trial;
  }

  /**
   * Follows an attempt and gives it up when its cost so far, and what the jobs still to come cost
   * before, is more than the limit. Jobs of a touched press count only once the press has passed
   * the place where it was touched, less what they can gain when it came free earlier. On one press
   * this gives up nothing that is worth it; on several a job of another press may become cheaper
   * unseen.
   */
  private final class Trial implements Follower {
    private final boolean[] excluded;
    private final boolean[] gains;

    /** What a job costs at least on a press that gains time. */
    private final long[] least;

    private Sequences sequences;
    private Touched touched = new Touched();
    private long[] spentBefore = new long[0];
    private long rest;
    private long most;

    Trial(WeekTables week) {
      excluded = new boolean[week.presses];
      gains = new boolean[week.presses];
      least = new long[week.jobCount()];
      sequences = new Sequences(0, 0);
    }

    void begin(Sequences of, Touched where, Snapshot from, long limit) {
      sequences = of;
      touched = where;
      spentBefore = from.jobCost;
      most = limit;
      rest = total - from.cost;
      Arrays.fill(excluded, false);
      Arrays.fill(gains, false);
      int[] position = java.util.Objects.requireNonNull(steps).states.position;
      for (int t = 0; t < where.count; t++) {
        int p = where.press[t];
        excluded[p] = true;
        rest -= tail(p, position[p]);
      }
    }

    private long tail(int press, int from) {
      long sum = 0;
      for (int i = from; i < sequences.size[press]; i++) {
        int job = sequences.jobs[press][i];
        sum += jobCost[job] - spentBefore[job];
      }
      return sum;
    }

    /** What the rest of a press costs at least when it comes so many minutes earlier. */
    private long leastTail(int press, int from, int earlier) {
      long sum = 0;
      for (int i = from; i < sequences.size[press]; i++) {
        int job = sequences.jobs[press][i];
        long cost = jobCost[job] - spentBefore[job];
        least[job] = Math.max(0, cost - week.charges.lateGain(job, earlier));
        sum += least[job];
      }
      return sum;
    }

    @Override
    public void opened() {
      // an attempt goes on from a snapshot
    }

    @Override
    public void spent(int job, long amount) {
      // counted in the cost so far
    }

    @Override
    public boolean settled(int press, int job, boolean running) {
      Steps of = java.util.Objects.requireNonNull(steps);
      if (excluded[press]) {
        passed(of, press);
      } else {
        rest -= gains[press] ? least[job] : jobCost[job] - spentBefore[job];
      }
      return of.cost + rest <= most;
    }

    private void passed(Steps of, int press) {
      int at = of.states.position[press];
      for (int t = 0; t < touched.count; t++) {
        if (touched.press[t] == press && touched.end[t] == at) {
          int before = size[press] - (sequences.size[press] - at);
          int free = before == 0 ? week.start : freeAfter[press][before - 1];
          int earlier = free - of.states.free[press];
          excluded[press] = false;
          gains[press] = earlier > 0;
          rest += earlier > 0 ? leastTail(press, at, earlier) : tail(press, at);
        }
      }
    }
  }
}
