package pressweek.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Jobs that can be made on the presses of a group only: together they have no more working time
 * than these presses. Groups are the presses of each single job, and whole islands: jobs of
 * different islands share neither press nor only mold. What loads of different islands exceed may
 * be added; of one island the best is taken. A load takes the place of what the single jobs in it
 * and the molds that it touches come to.
 */
final class PressLoads {
  private static final int MOST_SETS = 4;

  /** Groups of an island; further ones are left out. */
  private static final int MOST_GROUPS = 64;

  /** Jobs in all loads together; further groups are left out. */
  private static final int MOST_JOBS = 20_000;

  /** A load and the molds of {@link MoldLoads}, by place, that have any of its jobs. */
  private record Group(Load load, Set<Integer> molds, int presses) {}

  /**
   * What a load exceeds its lines singly by, and the molds whose own excess it takes the place of.
   */
  record Best(long excess, Set<Integer> molds, int presses, int jobs) {}

  private final Lines lines;
  private final List<MoldLoads.Loaded> molds;
  private final List<List<Group>> islands = new ArrayList<>();
  private final boolean[] soft;

  PressLoads(Lines lines, List<MoldLoads.Loaded> molds) {
    this.lines = lines;
    this.molds = molds;
    soft = new boolean[lines.problem.floor().presses().size()];
    lines.options.stream()
        .flatMap(List::stream)
        .filter(o -> !lines.handLoaded(o.mold()))
        .forEach(o -> soft[lines.names.press(o.press())] = true);
    int left = MOST_JOBS;
    for (List<Integer> island : islands()) {
      List<Group> groups = new ArrayList<>();
      for (BitSet presses : pressSets(island)) {
        int[] jobs =
            island.stream()
                .filter(j -> within(lines.presses[j], presses))
                .mapToInt(j -> j)
                .toArray();
        if (jobs.length > 1 && jobs.length <= left) {
          left -= jobs.length;
          groups.addAll(groups(jobs, presses));
        }
      }
      islands.add(groups);
    }
  }

  /** The best load of each island, where it exceeds anything. */
  List<Best> best(Singly singly, long[] moldExcess) {
    List<Best> found = new ArrayList<>();
    for (List<Group> island : islands) {
      Best best = new Best(0, Set.of(), 0, 0);
      long most = 0;
      for (Group group : island) {
        long excess = group.load.least(singly.unplaced()) - singly.sum(group.load.jobs);
        long gain = excess - group.molds.stream().mapToLong(m -> moldExcess[m]).sum();
        if (gain > most) {
          most = gain;
          best = new Best(excess, group.molds, group.presses, group.load.jobs.length);
        }
      }
      if (most > 0) {
        found.add(best);
      }
    }
    return found;
  }

  /** The time by which all presses together can have done the least work of all jobs. */
  int allDone() {
    int[] jobs = withOptions();
    long work = Arrays.stream(jobs).mapToLong(j -> lines.run[j]).sum();
    BitSet all = new BitSet();
    Arrays.stream(jobs).forEach(j -> all.or(lines.presses[j]));
    return capacity(all).reach(work);
  }

  private int[] withOptions() {
    return IntStream.range(0, lines.size()).filter(j -> !lines.presses[j].isEmpty()).toArray();
  }

  /** Jobs joined by a press that they share, or by their only mold. */
  private List<List<Integer>> islands() {
    int presses = soft.length;
    int[] root = IntStream.range(0, presses + lines.names.molds().size()).toArray();
    for (int j : withOptions()) {
      int first = lines.presses[j].nextSetBit(0);
      lines.presses[j].stream().forEach(p -> root[top(root, p)] = top(root, first));
      if (lines.soleMold[j] >= 0) {
        root[top(root, presses + lines.soleMold[j])] = top(root, first);
      }
    }
    Map<Integer, List<Integer>> islands = new LinkedHashMap<>();
    for (int j : withOptions()) {
      int island = top(root, lines.presses[j].nextSetBit(0));
      islands.computeIfAbsent(island, i -> new ArrayList<>()).add(j);
    }
    return List.copyOf(islands.values());
  }

  private static int top(int[] root, int of) {
    int at = of;
    while (root[at] != at) {
      root[at] = root[root[at]];
      at = root[at];
    }
    return at;
  }

  /** All presses of an island, and those of each of its jobs. */
  private Set<BitSet> pressSets(List<Integer> island) {
    BitSet all = new BitSet();
    island.forEach(j -> all.or(lines.presses[j]));
    Set<BitSet> sets = new LinkedHashSet<>();
    sets.add(all);
    island.stream().map(j -> lines.presses[j]).distinct().limit(MOST_GROUPS).forEach(sets::add);
    return sets;
  }

  private static boolean within(BitSet some, BitSet all) {
    BitSet beyond = (BitSet) some.clone();
    beyond.andNot(all);
    return beyond.isEmpty();
  }

  private List<Group> groups(int[] jobs, BitSet presses) {
    Capacity capacity = capacity(presses);
    List<Group> groups = new ArrayList<>();
    for (int[] some : MoldLoads.firstDue(lines, jobs, MOST_SETS)) {
      Load load = new Load(lines, some, capacity, presses.cardinality());
      groups.add(new Group(load, touched(some), presses.cardinality()));
    }
    return groups;
  }

  private Set<Integer> touched(int[] jobs) {
    boolean[] mold = new boolean[lines.names.molds().size()];
    Arrays.stream(jobs)
        .map(j -> lines.soleMold[j])
        .filter(m -> m >= 0)
        .forEach(m -> mold[m] = true);
    Set<Integer> touched = new LinkedHashSet<>();
    for (int i = 0; i < molds.size(); i++) {
      if (mold[lines.names.mold(molds.get(i).mold())]) {
        touched.add(i);
      }
    }
    return touched;
  }

  private Capacity capacity(BitSet presses) {
    List<int[]> times = presses.stream().mapToObj(p -> lines.hours.times(p, !soft[p])).toList();
    return Capacity.sum(lines.hours.start(), lines.hours.until(), times);
  }
}
