package pressweek.data.stress;

/**
 * A mean over replays, with the interval that holds the true mean in 95 of 100 cases (by the normal
 * distribution, which serves from some dozens of replays on).
 *
 * @param mean the mean
 * @param low lower end of the interval
 * @param high upper end
 */
public record Estimate(double mean, double low, double high) {
  private static final double Z = 1.959963984540054;

  /** The mean of values. */
  public static Estimate of(double[] values) {
    double n = values.length;
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    double mean = sum / n;
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    double half = values.length < 2 ? 0 : Z * Math.sqrt(squares / (n - 1) / n);
    return new Estimate(mean, mean - half, mean + half);
  }

  /** True when the interval leaves 0 out: the mean is not 0 by chance. */
  public boolean isSure() {
    return low > 0 || high < 0;
  }
}
