package pressweek.solver.timing;

/**
 * Where sequences differ from others: on up to two presses, from a place to another. What comes
 * after it on the press is the same as before, in the same order.
 */
public final class Touched {
  final int[] press = new int[2];
  final int[] first = new int[2];
  final int[] end = new int[2];
  int count;

  /** Nowhere. */
  public void clear() {
    count = 0;
  }

  /** On a press, from a place to, not including, another; as it is after the move. */
  public void add(int onPress, int from, int to) {
    press[count] = onPress;
    first[count] = from;
    end[count++] = to;
  }
}
