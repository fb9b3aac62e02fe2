package pressweek.solver.bound;

import java.util.BitSet;
import java.util.List;

/** Working minutes of several presses together, minute by minute from the start of the plan. */
final class Capacity {
  private final int start;

  /** Minutes worked before each minute after the start. */
  private final int[] before;

  private Capacity(int start, int[] before) {
    this.start = start;
    this.before = before;
  }

  /** All presses at once: a minute counts once for each press that works in it. */
  static Capacity sum(int start, int until, List<int[]> times) {
    int[] presses = presses(start, until, times);
    return new Capacity(start, sums(presses));
  }

  /** One after the other, in the minutes after the start that are in a set. */
  static Capacity of(int start, int until, BitSet minutes) {
    int[] presses = new int[until - start + 1];
    minutes.stream().forEach(i -> presses[i] = 1);
    return new Capacity(start, sums(presses));
  }

  /** The minutes after a start, by first minutes and ends in turn. */
  static BitSet minutes(int start, int until, int[] times) {
    BitSet minutes = new BitSet(until - start);
    for (int i = 0; i < times.length; i += 2) {
      int from = Math.max(0, Math.min(until, times[i]) - start);
      int to = Math.max(0, Math.min(until, times[i + 1]) - start);
      minutes.set(from, Math.max(from, to));
    }
    return minutes;
  }

  private static int[] presses(int start, int until, List<int[]> times) {
    int[] count = new int[until - start + 1];
    for (int[] spans : times) {
      for (int i = 0; i < spans.length; i += 2) {
        count[Math.max(start, Math.min(until, spans[i])) - start]++;
        count[Math.max(start, Math.min(until, spans[i + 1])) - start]--;
      }
    }
    for (int i = 1; i < count.length; i++) {
      count[i] += count[i - 1];
    }
    return count;
  }

  private static int[] sums(int[] presses) {
    int[] before = new int[presses.length];
    for (int i = 1; i < before.length; i++) {
      before[i] = before[i - 1] + presses[i - 1];
    }
    return before;
  }

  /** Minutes worked before a time. */
  int before(int time) {
    return before[Math.max(0, Math.min(before.length - 1, time - start))];
  }

  /** The first time by which so many minutes can be worked; the last one known when none is. */
  int reach(long minutes) {
    int low = 0;
    int high = before.length - 1;
    while (low < high) {
      int mid = (low + high) >>> 1;
      if (before[mid] >= minutes) {
        high = mid;
      } else {
        low = mid + 1;
      }
    }
    return start + low;
  }
}
