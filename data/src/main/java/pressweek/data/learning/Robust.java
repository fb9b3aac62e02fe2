package pressweek.data.learning;

import java.util.Arrays;

/**
 * Statistics that a few odd values do not move. The middle is the estimator of J. L. Hodges and E.
 * L. Lehmann (Annals of Mathematical Statistics 34 (1963) 598-611): the median of the means of all
 * pairs, each value with itself among them. Its interval is the one of Wilcoxon's signed ranks (M.
 * Hollander, D. A. Wolfe, Nonparametric Statistical Methods, chapter 3), exact up to 50 values. The
 * spread is the median absolute deviation from the median, times 1.4826, which makes it the
 * standard deviation where values are normally distributed.
 *
 * @param n how many values
 * @param middle the middle
 * @param low lower end of its interval of 95 % or a little more
 * @param high upper end
 * @param spread the spread
 */
public record Robust(int n, double middle, double low, double high, double spread) {
  /** Values that are looked at; of more, the last. */
  public static final int MOST = 1_000;

  private static final double CONSISTENT = 1.4826;
  private static final int EXACT = 50;
  private static final double TAIL = 0.025;
  private static final double Z = 1.959963984540054;

  /** The statistics of at least one value; the newest last. */
  public static Robust of(double[] values) {
    double[] last = Arrays.copyOfRange(values, Math.max(0, values.length - MOST), values.length);
    double[] walsh = walsh(last);
    int cut = cut(last.length);
    return new Robust(
        last.length,
        middle(walsh),
        walsh[cut],
        walsh[walsh.length - 1 - cut],
        CONSISTENT * deviation(last));
  }

  /** The median. */
  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return middle(sorted);
  }

  /** The median absolute deviation from the median. */
  static double deviation(double[] values) {
    double median = median(values);
    return median(Arrays.stream(values).map(v -> Math.abs(v - median)).toArray());
  }

  private static double middle(double[] sorted) {
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  /** Means of all pairs, rising. */
  private static double[] walsh(double[] values) {
    int n = values.length;
    double[] means = new double[n * (n + 1) / 2];
    int k = 0;
    for (int i = 0; i < n; i++) {
      for (int j = i; j < n; j++) {
        means[k++] = (values[i] + values[j]) / 2;
      }
    }
    Arrays.sort(means);
    return means;
  }

  /**
   * How many of the smallest means, and of the largest, lie below and above the interval. With
   * fewer than six values no interval is so sure, and it is the whole range.
   */
  private static int cut(int n) {
    if (n > EXACT) {
      double mean = n * (n + 1) / 4.0;
      double deviation = Math.sqrt(n * (n + 1) * (2.0 * n + 1) / 24);
      return Math.max(0, (int) Math.floor(mean - Z * deviation) - 1);
    }
    double[] chance = signedRanks(n);
    double sum = 0;
    int cut = 0;
    while (sum + chance[cut] <= TAIL) {
      sum += chance[cut++];
    }
    return Math.max(0, cut - 1);
  }

  /** The chance of each sum of signed ranks. */
  private static double[] signedRanks(int n) {
    double[] chance = new double[n * (n + 1) / 2 + 1];
    chance[0] = 1;
    for (int rank = 1; rank <= n; rank++) {
      for (int sum = chance.length - 1; sum >= 0; sum--) {
        chance[sum] = chance[sum] / 2 + (sum >= rank ? chance[sum - rank] / 2 : 0);
      }
    }
    return chance;
  }
}
