package pressweek.data.week;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import pressweek.data.files.Nearest;

/** How amounts and lists are written in reasons. */
final class Words {
  private Words() {}

  /** The known ids that look most like one that is not known. */
  static List<String> nearest(String id, Collection<String> known, int most) {
    return Nearest.to(id, known, most);
  }

  /** An amount rounded for reading: {@code 520}, {@code 71.3}, {@code 0.75}. */
  static String amount(double value) {
    double size = Math.abs(value);
    int decimals = size >= 100 ? 0 : size >= 1 ? 1 : 2;
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A number as it was written: {@code 12.5}. */
  static String exact(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** The number that a text is; empty when it is none. */
  static OptionalDouble number(String text) {
    return text.matches("\\d{1,9}(\\.\\d{1,9})?")
        ? OptionalDouble.of(Double.parseDouble(text))
        : OptionalDouble.empty();
  }

  /** The first few of a list: {@code P1, P2, P3 and 5 more}. */
  static String few(List<String> all, int most) {
    if (all.size() <= most) {
      return String.join(", ", all);
    }
    return String.join(", ", all.subList(0, most)) + " and " + (all.size() - most) + " more";
  }
}
