package pressweek.data.stress;

/**
 * A share of replays, with the interval that holds the true chance in 95 of 100 cases.
 *
 * @param hits replays in which it happened
 * @param replays all replays
 * @param low lower end of the interval, 0 to 1
 * @param high upper end
 */
public record Chance(int hits, int replays, double low, double high) {
  /** The normal quantile of a two-sided interval of 95 %. */
  private static final double Z = 1.959963984540054;

  /**
   * The chance with its score interval: E. B. Wilson, Journal of the American Statistical
   * Association 22 (1927) 209-212.
   */
  public static Chance of(int hits, int replays) {
    if (replays < 1 || hits < 0 || hits > replays) {
      throw new IllegalArgumentException(hits + " of " + replays + " replays");
    }
    double n = replays;
    double p = hits / n;
    double z2 = Z * Z;
    double middle = (p + z2 / (2 * n)) / (1 + z2 / n);
    double half = Z / (1 + z2 / n) * Math.sqrt(p * (1 - p) / n + z2 / (4 * n * n));
    double low = hits == 0 ? 0 : Math.max(0, middle - half);
    double high = hits == replays ? 1 : Math.min(1, middle + half);
    return new Chance(hits, replays, low, high);
  }

  /** The share, 0 to 1. */
  public double share() {
    return (double) hits / replays;
  }
}
