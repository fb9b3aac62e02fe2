package pressweek.solver.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.solver.timing.WeekTables;

/**
 * For each job the jobs that it may well stand beside: those whose change to it is short. Beyond a
 * thousand jobs only those of the same mold or material are looked at.
 */
public final class Neighbours {
  /** Neighbours of a job that are kept. */
  private static final int MOST = 12;

  /** Up to so many jobs every pair is looked at. */
  private static final int ALL_PAIRS = 1_000;

  private static final int[] NONE = new int[0];

  private final int[][] of;

  /** The neighbours of all jobs of a week. */
  public Neighbours(WeekTables week) {
    int n = week.jobCount();
    of = new int[n][];
    int[] all = new int[n];
    for (int j = 0; j < n; j++) {
      all[j] = j;
    }
    Map<Integer, int[]> byMold = n > ALL_PAIRS ? groups(week, n, true) : Map.of();
    Map<Integer, int[]> byMaterial = n > ALL_PAIRS ? groups(week, n, false) : Map.of();
    for (int j = 0; j < n; j++) {
      if (n <= ALL_PAIRS) {
        of[j] = nearest(week, j, all);
      } else {
        int[] molds = byMold.getOrDefault(week.firstMold(j), NONE);
        int[] materials = byMaterial.getOrDefault(week.material(j), NONE);
        int[] both = java.util.Arrays.copyOf(molds, molds.length + Math.min(60, materials.length));
        for (int i = molds.length; i < both.length; i++) {
          both[i] = materials[(j + i) % materials.length];
        }
        of[j] = nearest(week, j, both);
      }
    }
  }

  private static Map<Integer, int[]> groups(WeekTables week, int n, boolean mold) {
    Map<Integer, List<Integer>> lists = new HashMap<>();
    for (int j = 0; j < n; j++) {
      int key = mold ? week.firstMold(j) : week.material(j);
      lists.computeIfAbsent(key, k -> new ArrayList<>()).add(j);
    }
    Map<Integer, int[]> out = new HashMap<>();
    lists.forEach((k, l) -> out.put(k, l.stream().mapToInt(Integer::intValue).toArray()));
    return out;
  }

  /** The jobs after which a job has the shortest changes. */
  private static int[] nearest(WeekTables week, int job, int[] from) {
    long[] keys = new long[from.length];
    int size = 0;
    for (int other : from) {
      int minutes = other == job ? -1 : week.changeGuess(other, job);
      if (minutes >= 0) {
        keys[size++] = ((long) minutes << 32) | other;
      }
    }
    java.util.Arrays.sort(keys, 0, size);
    int[] out = new int[Math.min(MOST, size)];
    for (int i = 0; i < out.length; i++) {
      out[i] = (int) keys[i];
    }
    return out;
  }

  /** Jobs after which a job may well stand. */
  int[] of(int job) {
    return of[job];
  }
}
