package pressweek.data.files;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as they stand in a cell. */
final class Numbers {
  private static final Pattern POINT =
      Pattern.compile("[+-]?(\\d{1,15}(\\.\\d{0,15})?|\\.\\d{1,15})");
  private static final Pattern COMMA = Pattern.compile("[+-]?(\\d{1,15}(,\\d{0,15})?|,\\d{1,15})");
  private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}(\\.\\d{3})+");

  private Numbers() {}

  /**
   * The number; empty when the text is none. A comma is a decimal comma where the file's separator
   * leaves it free.
   */
  static Optional<BigDecimal> parse(String text, boolean decimalComma) {
    if (POINT.matcher(text).matches()) {
      return Optional.of(new BigDecimal(text));
    }
    if (decimalComma && COMMA.matcher(text).matches()) {
      return Optional.of(new BigDecimal(text.replace(',', '.')));
    }
    return Optional.empty();
  }

  /**
   * True when the point in it may separate thousands: {@code 1.250} where commas are decimal, or
   * where pieces are counted.
   */
  static boolean ambiguous(String text, boolean decimalComma, boolean whole) {
    return (decimalComma || whole) && GROUPED.matcher(text).matches();
  }

  /** A limit as a person reads it. */
  static String show(long limit) {
    return String.format(Locale.ROOT, "%,d", limit);
  }

  /** A limit as a person reads it. */
  static String show(double limit) {
    return limit == Math.rint(limit)
        ? show((long) limit)
        : BigDecimal.valueOf(limit).stripTrailingZeros().toPlainString();
  }
}
