package pressweek.reports.schedule;

import java.util.Locale;
import pressweek.data.problem.Rates;

/** Amounts of money in words. */
public final class Money {
  private static final long CENT = 1_000;

  private Money() {}

  /** An amount in thousandths of a cent, rounded half up to cents: {@code EUR 1,234.50}. */
  public static String words(Rates rates, long amount) {
    return rates.currency() + " " + figure(amount);
  }

  /** The amount alone: {@code 1,234.50}. */
  public static String figure(long amount) {
    long cents = Math.floorDiv(amount + CENT / 2, CENT);
    String sign = cents < 0 ? "-" : "";
    long size = Math.abs(cents);
    return sign + String.format(Locale.ROOT, "%,d.%02d", size / 100, size % 100);
  }
}
