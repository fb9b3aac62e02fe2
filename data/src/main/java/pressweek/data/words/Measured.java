package pressweek.data.words;

import java.math.BigDecimal;

/**
 * A number as it stands in the words.
 *
 * @param value the number
 * @param unit its unit
 * @param text the number as people would write it, without the unit
 * @param times true when a multiplication sign stands before it
 */
record Measured(BigDecimal value, Unit unit, String text, boolean times) {
  static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

  /** What is said of the unit. */
  enum Unit {
    NONE,
    MM,
    INCH,
    /** The word in, which may be no unit. */
    IN
  }

  /** True when it can only be inches. */
  boolean isInch() {
    return unit == Unit.INCH;
  }

  /** True when nothing is said of the unit. */
  boolean isBare() {
    return unit == Unit.NONE;
  }

  boolean isWhole() {
    return value.stripTrailingZeros().scale() <= 0;
  }

  static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
