package pressweek.data.problem;

/**
 * How many good pieces a job makes and how that number came about.
 *
 * @param ordered pieces ordered
 * @param fromStock pieces taken from finished stock
 * @param made pieces already made by a run in progress
 * @param good good pieces still to make, after carton multiple; at least 1
 */
public record Quantity(int ordered, int fromStock, int made, int good) {
  public Quantity {
    if (good < 1) {
      throw new IllegalArgumentException("good must be at least 1 but was " + good);
    }
  }
}
