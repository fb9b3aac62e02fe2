package pressweek.data.molding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The share of masterbatch in a coloured resin, as a fraction of the total mass.
 *
 * <p>Two conventions are about: "4 %" is read as percent of the total (pigmentosquimicos.com); a
 * ratio as parts of natural resin to parts of masterbatch, so that 25:1 is 1 part of 26 (worked
 * figures of kananipigment.com: 30 % masterbatch at 1:50 is 0.59 % pigment).
 *
 * @param fraction above 0, at most 1
 */
public record LetDown(double fraction) {
  private static final Pattern RATIO =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*:\\s*(\\d{1,6}(?:\\.\\d{1,6})?)");
  private static final Pattern PERCENT = Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?)\\s*%?");
  private static final String EXPECTED =
      "expected percent of the total mass above 0 and up to 100, as 4, or a ratio, as 25:1";

  public LetDown {
    if (!(fraction > 0) || fraction > 1) {
      throw new IllegalArgumentException(
          "let-down must be above 0 and at most 1 but was " + fraction);
    }
  }

  /** What a text of a let-down says. */
  public sealed interface Reading {
    /** It says this. */
    record Good(LetDown letDown) implements Reading {}

    /** It cannot be read: what we saw; what we expected. */
    record Bad(String message) implements Reading {}
  }

  /**
   * Reads {@code 4}, {@code 4 %}, {@code 25:1} or {@code 1:25}. In a ratio the smaller number is
   * the masterbatch, whichever way round it is written.
   */
  public static Reading read(String text) {
    Matcher ratio = RATIO.matcher(text.strip());
    if (ratio.matches()) {
      return ratio(text, new BigDecimal(ratio.group(1)), new BigDecimal(ratio.group(2)));
    }
    Matcher percent = PERCENT.matcher(text.strip());
    if (!percent.matches()) {
      return bad(text, "is not a let-down");
    }
    double pct = Double.parseDouble(percent.group(1));
    if (pct <= 0) {
      return bad(text, "is no masterbatch");
    }
    return pct > 100
        ? bad(text, "is more than the whole")
        : new Reading.Good(new LetDown(pct / 100));
  }

  private static Reading ratio(String text, BigDecimal one, BigDecimal other) {
    BigDecimal masterbatch = one.min(other);
    if (masterbatch.signum() == 0) {
      return bad(text, "has a part of 0");
    }
    BigDecimal fraction = masterbatch.divide(one.add(other), MathContext.DECIMAL64);
    return new Reading.Good(new LetDown(fraction.doubleValue()));
  }

  private static Reading bad(String text, String what) {
    return new Reading.Bad("\"" + text + "\" " + what + "; " + EXPECTED);
  }

  /** Percent of the total mass. */
  public double pct() {
    return 100 * fraction;
  }

  /** Kilograms of masterbatch in so many of coloured resin. */
  public double masterbatchKg(double totalKg) {
    return totalKg * fraction;
  }

  /** The fraction of pigment in the part, from that in the masterbatch. */
  public double pigmentFraction(double inMasterbatch) {
    return inMasterbatch * fraction;
  }
}
