package pressweek.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Jobs that can be made in one mold only: it is in one place at a time, so their runs come one
 * after the other, in minutes in which any press works that may hold it, and never while it is
 * away. A bound for some of the jobs holds for all, since the others cost no less than they do
 * singly; the best of several is taken.
 */
final class MoldLoads {
  private static final int MOST_SETS = 10;

  /**
   * The jobs of a mold.
   *
   * @param mold mold
   * @param jobs its jobs
   * @param loads some of them, by due time
   */
  record Loaded(String mold, int[] jobs, List<Load> loads) {
    Loaded {
      loads = List.copyOf(loads);
    }

    /** By how much the load exceeds what the jobs cost singly. */
    long excess(Singly singly) {
      return loads.stream()
          .mapToLong(load -> load.least(singly.unplaced()) - singly.sum(load.jobs))
          .reduce(0, Math::max);
    }
  }

  private final Lines lines;

  /** Minutes worked, by the hours themselves. */
  private final Map<int[], BitSet> byTimes = new IdentityHashMap<>();

  private final Map<BitSet, Capacity> byMinutes = new HashMap<>();

  private MoldLoads(Lines lines) {
    this.lines = lines;
  }

  /** The molds that have several jobs to themselves. */
  static List<Loaded> of(Lines lines) {
    List<List<Integer>> jobs = new ArrayList<>();
    lines.names.molds().forEach(m -> jobs.add(new ArrayList<>()));
    for (int j = 0; j < lines.size(); j++) {
      if (lines.soleMold[j] >= 0) {
        jobs.get(lines.soleMold[j]).add(j);
      }
    }
    MoldLoads times = new MoldLoads(lines);
    List<Loaded> all = new ArrayList<>();
    for (int m = 0; m < jobs.size(); m++) {
      if (jobs.get(m).size() > 1) {
        int[] own = jobs.get(m).stream().mapToInt(Integer::intValue).toArray();
        String mold = lines.names.molds().get(m);
        Capacity capacity = times.capacity(jobs.get(m), mold);
        List<Load> loads = new ArrayList<>();
        for (int[] some : firstDue(lines, own, MOST_SETS)) {
          loads.add(new Load(lines, some, capacity, 1));
        }
        all.add(new Loaded(mold, own, loads));
      }
    }
    return all;
  }

  /** Working time of the presses of a mold less the time when it is away. */
  private Capacity capacity(List<Integer> jobs, String mold) {
    BitSet presses = new BitSet();
    jobs.forEach(j -> presses.or(lines.presses[j]));
    BitSet minutes = new BitSet();
    presses.stream()
        .mapToObj(p -> lines.hours.times(p, lines.handLoaded(mold)))
        .distinct()
        .forEach(times -> minutes.or(byTimes.computeIfAbsent(times, this::minutes)));
    minutes.andNot(minutes(lines.molds.of(mold)));
    return byMinutes.computeIfAbsent(
        minutes, all -> Capacity.of(lines.hours.start(), lines.hours.until(), all));
  }

  private BitSet minutes(int[] times) {
    return Capacity.minutes(lines.hours.start(), lines.hours.until(), times);
  }

  /** The jobs due first, of several numbers, each with more than one, and all of them. */
  static List<int[]> firstDue(Lines lines, int[] jobs, int most) {
    int[] byDue = lines.byDue(jobs);
    List<int[]> sets = new ArrayList<>();
    int before = 1;
    for (int i = 1; i <= most; i++) {
      int size = (int) ((long) byDue.length * i / most);
      if (size > before) {
        sets.add(Arrays.copyOf(byDue, size));
        before = size;
      }
    }
    return sets;
  }
}
