package pressweek.data.working;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How figures are written in a working. */
final class Figure {
  private static final int MOST_DECIMALS = 9;

  private Figure() {}

  /** A result, rounded for reading: {@code 5693}, {@code 161.7}, {@code 12.57}, {@code 0.385}. */
  static String of(double value) {
    double size = Math.abs(value);
    int decimals = size >= 1000 ? 0 : size >= 100 ? 1 : size >= 1 ? 2 : 3;
    return plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
  }

  /** A figure as it was given: {@code 0.905}. */
  static String exact(double value) {
    return plain(BigDecimal.valueOf(value).setScale(MOST_DECIMALS, RoundingMode.HALF_UP));
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
