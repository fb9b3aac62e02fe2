package pressweek.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a set of jobs costs at the least that share the working time of the same presses, or the
 * same mold.
 *
 * <p>Proof: let {@code u} of the jobs have no place. They cost at least the {@code u} least charges
 * for that. The rest are late by what {@link Layer} says: with weights {@code w1 < w2 < ...} the
 * lateness by weight is the sum over all steps of weight of the step times the lateness of all jobs
 * that weigh at least as much. No more than {@code u} of a layer are left out, and its least
 * lateness falls with what is left out. Each charge is rounded down twice, which costs less than
 * its weight and one. No plan has fewer left out than must be: of the runs of a plan all but the
 * last of each press are over before another starts, and that one starts before the horizon's end,
 * so that much work fits before it. The least over all {@code u} that are possible holds for every
 * plan.
 */
final class Load {
  private static final int MOST_LAYERS = 8;
  private static final int MOST_ROWS = 128;

  final int[] jobs;

  private final Lines lines;
  private final List<Layer> layers = new ArrayList<>();
  private final int leastLeftOut;
  private final long rounding;

  /** Lateness by how many are left out; -1 while it is not known. */
  private final long[] late;

  /** Numbers of jobs left out that are looked at together: 1, or more when there are many jobs. */
  private final int step;

  private long best;

  /**
   * A load.
   *
   * @param jobs its jobs, each of which has an option
   * @param capacity working time of its presses, or of its mold
   * @param lanes how many runs may go on at once
   */
  Load(Lines lines, int[] jobs, Capacity capacity, int lanes) {
    this.lines = lines;
    this.jobs = jobs;
    int below = 0;
    for (int weight : weights(lines, jobs)) {
      int[] heavy = Arrays.stream(jobs).filter(j -> lines.weight[j] >= weight).toArray();
      layers.add(new Layer(lines, heavy, weight - below, capacity));
      below = weight;
    }
    rounding = Arrays.stream(jobs).mapToLong(j -> lines.weight[j] / 100 + 2).sum();
    step = (jobs.length + MOST_ROWS - 1) / MOST_ROWS;
    late = new long[jobs.length + 1];
    Arrays.fill(late, -1);
    leastLeftOut = leastLeftOut(capacity, lanes);
  }

  /** Different weights of the jobs, ascending; where there are many, some of them only. */
  private static int[] weights(Lines lines, int[] jobs) {
    int[] all = Arrays.stream(jobs).map(j -> lines.weight[j]).sorted().distinct().toArray();
    if (all.length <= MOST_LAYERS) {
      return all;
    }
    int[] some = new int[MOST_LAYERS];
    for (int i = 0; i < MOST_LAYERS; i++) {
      some[i] = all[i * all.length / MOST_LAYERS];
    }
    return some;
  }

  private int leastLeftOut(Capacity capacity, int lanes) {
    long fits = capacity.before(lines.problem.plant().hours().endMin());
    int[] runs = Arrays.stream(jobs).map(j -> lines.run[j]).sorted().toArray();
    long work = 0;
    int over = 0;
    while (over < runs.length && work + runs[over] <= fits) {
      work += runs[over++];
    }
    return Math.max(0, runs.length - over - lanes);
  }

  /** The least that the jobs cost together when each that has no place costs so much. */
  long least(long[] unplaced) {
    long[] out = new long[jobs.length + 1];
    long[] charges = Arrays.stream(jobs).mapToLong(j -> unplaced[j]).sorted().toArray();
    for (int u = 0; u < charges.length; u++) {
      out[u + 1] = out[u] + charges[u];
    }
    best = out[jobs.length];
    search(out, 0, (jobs.length - 1) / step);
    return Math.max(0, best - rounding);
  }

  /**
   * Looks at rows of {@link #step} numbers of jobs left out. What is in a row, or in several, costs
   * no less than leaving out the fewest and being late as with the most; so halves of several rows
   * are looked at only while that is less than what has been found.
   */
  private void search(long[] out, int firstRow, int lastRow) {
    int fewest = Math.max(firstRow * step, leastLeftOut);
    int most = Math.min((lastRow + 1) * step, jobs.length) - 1;
    if (fewest > most || out[fewest] >= best) {
      return;
    }
    long least = out[fewest] + late(most);
    if (least >= best) {
      return;
    }
    if (firstRow == lastRow) {
      best = least;
      return;
    }
    int mid = (firstRow + lastRow) >>> 1;
    search(out, firstRow, mid);
    search(out, mid + 1, lastRow);
  }

  private long late(int u) {
    if (late[u] < 0) {
      late[u] = layers.stream().mapToLong(layer -> layer.least(u)).sum();
    }
    return late[u];
  }
}
