package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.List;

/**
 * A rough view of components that can run short: by the order of the starts of the runs that take
 * one, how long each would have to wait for what it needs.
 */
final class StockModel {
  private final WeekTables week;
  private final JobTable jobs;

  /** Jobs that take a component that can run short; none for others. */
  private final int[][] takers;

  private final long[] waits;
  private final boolean[] dirty;
  private final int[] dirtyList;
  private int dirtyCount;
  private final int[] order;

  StockModel(WeekTables week) {
    this.week = week;
    jobs = week.jobs;
    int components = week.stock.size();
    waits = new long[components];
    dirty = new boolean[components];
    dirtyList = new int[components];
    order = new int[week.jobCount()];
    takers = takers(components);
  }

  private int[][] takers(int components) {
    List<List<Integer>> lists = new ArrayList<>();
    long[] needs = new long[components];
    for (int c = 0; c < components; c++) {
      lists.add(new ArrayList<>());
    }
    for (int j = 0; j < week.jobCount(); j++) {
      int o = week.firstOption(j);
      for (int t = o < 0 ? 0 : jobs.firstTake[o]; o >= 0 && t < jobs.firstTake[o + 1]; t++) {
        lists.get(jobs.takeComponent[t]).add(j);
        needs[jobs.takeComponent[t]] += jobs.takePieces[t] + jobs.takeStartup[t];
      }
    }
    int[][] out = new int[components][];
    for (int c = 0; c < components; c++) {
      boolean shortable = needs[c] > week.stock.atHand[c];
      out[c] =
          shortable
              ? lists.get(c).stream().mapToInt(Integer::intValue).distinct().toArray()
              : new int[0];
    }
    return out;
  }

  /** The components of a job have to be looked at anew. */
  void touch(int option) {
    for (int t = jobs.firstTake[option]; t < jobs.firstTake[option + 1]; t++) {
      int c = jobs.takeComponent[t];
      if (!dirty[c] && takers[c].length > 0) {
        dirty[c] = true;
        dirtyList[dirtyCount++] = c;
      }
    }
  }

  /**
   * Minutes of waiting for all components that were touched, less what they were before.
   *
   * @param option option of each job that runs, -1 for one that does not
   * @param start start of its run
   */
  long renew(int[] option, int[] start) {
    long delta = 0;
    for (int i = 0; i < dirtyCount; i++) {
      int c = dirtyList[i];
      dirty[c] = false;
      long now = waits(c, option, start);
      delta += now - waits[c];
      waits[c] = now;
    }
    dirtyCount = 0;
    return delta;
  }

  /** Whether any component can run short. */
  boolean any() {
    return java.util.Arrays.stream(takers).anyMatch(t -> t.length > 0);
  }

  private long waits(int component, int[] option, int[] start) {
    int size = 0;
    for (int job : takers[component]) {
      if (option[job] >= 0) {
        int at = size++;
        while (at > 0 && start[order[at - 1]] > start[job]) {
          order[at] = order[at - 1];
          at--;
        }
        order[at] = job;
      }
    }
    long sum = 0;
    long taken = 0;
    for (int i = 0; i < size; i++) {
      int job = order[i];
      taken += need(component, option[job]);
      if (taken > week.stock.atHand[component]) {
        sum += Math.max(0, ready(component, taken) - start[job]);
      }
    }
    return sum;
  }

  private int need(int component, int option) {
    int sum = 0;
    for (int t = jobs.firstTake[option]; t < jobs.firstTake[option + 1]; t++) {
      sum += jobs.takeComponent[t] == component ? jobs.takePieces[t] + jobs.takeStartup[t] : 0;
    }
    return sum;
  }

  private int ready(int component, long pieces) {
    int[] levels = week.stock.level[component];
    for (int i = 0; i < levels.length; i++) {
      if (levels[i] >= pieces) {
        return week.stock.time[component][i] + week.insertLead;
      }
    }
    return week.end;
  }

  /** Forgets all. */
  void clear() {
    java.util.Arrays.fill(waits, 0);
  }
}
