package pressweek.reports.stress;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import pressweek.data.stress.Chance;
import pressweek.data.stress.Estimate;

/** Estimates in words: with one decimal, and with the interval that holds the true figure. */
final class Figure {
  private static final double PCT = 100;
  private static final BigDecimal HOUR = BigDecimal.valueOf(60);

  private Figure() {}

  /** A number with one decimal: {@code 1,234.5}; never a nought with a sign. */
  static String one(double value) {
    return String.format(Locale.ROOT, "%,.1f", decimal(value));
  }

  /** A number with as many decimals as it has, at most two: {@code 0.25}. */
  static String plain(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
    return rounded.stripTrailingZeros().toPlainString();
  }

  /** Hours of minutes: {@code 0.25}. */
  static String hours(int minutes) {
    return plain(minutes / 60.0);
  }

  /** Hours of minutes with one decimal, rounded up. */
  static BigDecimal hoursUp(int minutes) {
    return BigDecimal.valueOf(minutes).divide(HOUR, 1, RoundingMode.CEILING);
  }

  /** With a sign where it is not nought: {@code +1.2}. */
  static String signed(double value) {
    String text = one(value);
    return decimal(value).signum() > 0 ? "+" + text : text;
  }

  /** The ends of an interval: {@code 117.0 to 117.6}. */
  static String interval(Estimate of) {
    return one(of.low()) + " to " + one(of.high());
  }

  /** The ends of an interval with their signs. */
  static String signedInterval(Estimate of) {
    return signed(of.low()) + " to " + signed(of.high());
  }

  /** A share in percent: {@code 93.1 %}. */
  static String percent(double share) {
    return one(share * PCT) + " %";
  }

  /** A share and its interval: {@code 93.1 % (91.4 to 94.5)}. */
  static String percent(Chance of) {
    return "%s (%s to %s)"
        .formatted(percent(of.share()), one(of.low() * PCT), one(of.high() * PCT));
  }

  /** The same without signs of percent: {@code 93.1 (91.4-94.5)}. */
  static String brief(Chance of) {
    return "%s (%s-%s)".formatted(one(of.share() * PCT), one(of.low() * PCT), one(of.high() * PCT));
  }

  /** One decimal, for lists. */
  static BigDecimal decimal(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(1) : rounded;
  }

  /** Percent with one decimal, for lists. */
  static BigDecimal decimalPercent(double share) {
    return decimal(share * PCT);
  }
}
