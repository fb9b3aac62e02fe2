package pressweek.solver.timing;

/** Presses by the time of their next step, the lower press first at equal times. */
final class PressHeap {
  private final long[] keys;

  /** How many presses there are; an array of one, so that a snapshot may keep it. */
  private final int[] count = new int[1];

  PressHeap(int presses) {
    keys = new long[presses];
  }

  void name(Snapshot.Changing all) {
    all.add(keys, count);
  }

  void clear() {
    count[0] = 0;
  }

  boolean isEmpty() {
    return count[0] == 0;
  }

  int press() {
    return (int) (keys[0] & 0xFFFF);
  }

  int time() {
    return (int) (keys[0] >> 16);
  }

  /** The time of the press that comes after the first one; {@link Spans#FAR} when there is none. */
  int nextTime() {
    if (count[0] < 2) {
      return Spans.FAR;
    }
    long next = count[0] > 2 ? Math.min(keys[1], keys[2]) : keys[1];
    return (int) (next >> 16);
  }

  void add(int press, int time) {
    int i = count[0]++;
    long key = ((long) time << 16) | press;
    while (i > 0 && keys[(i - 1) >> 1] > key) {
      keys[i] = keys[(i - 1) >> 1];
      i = (i - 1) >> 1;
    }
    keys[i] = key;
  }

  /** Gives the first press a later time. */
  void later(int time) {
    sink(((long) time << 16) | (keys[0] & 0xFFFF));
  }

  /** Takes the first press out. */
  void remove() {
    count[0]--;
    if (count[0] > 0) {
      sink(keys[count[0]]);
    }
  }

  private void sink(long key) {
    int size = count[0];
    int i = 0;
    while (2 * i + 1 < size) {
      int child = 2 * i + 1;
      if (child + 1 < size && keys[child + 1] < keys[child]) {
        child++;
      }
      if (keys[child] >= key) {
        break;
      }
      keys[i] = keys[child];
      i = child;
    }
    keys[i] = key;
  }
}
