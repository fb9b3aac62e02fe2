package pressweek.solver.timing;

import java.lang.reflect.Array;
import java.util.Arrays;
import java.util.List;

/**
 * What changes while a pass goes on, kept at one moment, so that a later pass can go on from there.
 * The arrays of a pass are named once, in {@link Changing}; a snapshot holds copies of them.
 */
final class Snapshot {
  /** The arrays of a pass that change while it goes on. */
  static final class Changing {
    private Object[] arrays = new Object[0];

    void add(Object... more) {
      int size = arrays.length;
      arrays = Arrays.copyOf(arrays, size + more.length);
      System.arraycopy(more, 0, arrays, size, more.length);
    }
  }

  private Object[] kept = new Object[0];

  /** Totals of the pass. */
  long cost;

  long broken;
  int lastEnd;
  int settled;

  /** What each job had cost. */
  long[] jobCost = new long[0];

  List<List<ComponentStock.Draw>> draws = List.of();

  void save(Changing of) {
    Object[] now = of.arrays;
    if (kept.length != now.length) {
      kept = new Object[now.length];
      for (int i = 0; i < now.length; i++) {
        kept[i] = Array.newInstance(now[i].getClass().getComponentType(), Array.getLength(now[i]));
      }
    }
    copy(now, kept);
  }

  void restore(Changing of) {
    copy(kept, of.arrays);
  }

  private static void copy(Object[] from, Object[] to) {
    for (int i = 0; i < from.length; i++) {
      System.arraycopy(from[i], 0, to[i], 0, Array.getLength(from[i]));
    }
  }
}
