package pressweek.data.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Values of a scenario as the cells of a table hold them. */
final class ScenarioValue {
  private static final BigDecimal LEAST = new BigDecimal("0.001");
  private static final BigDecimal MOST = BigDecimal.valueOf(1000);

  /** Digits after the point that a scaled figure keeps. */
  private static final int DIGITS = 6;

  /** Digits of a number that a cell can hold. */
  private static final int LONGEST = 15;

  private ScenarioValue() {}

  /**
   * The value as it would stand in a cell: yes or no, a list separated by bars, nothing for null;
   * empty when no cell can hold it.
   *
   * @param decimalComma true when the table has decimal commas
   */
  static Optional<String> text(JsonTree value, boolean decimalComma) {
    if (value instanceof JsonTree.Text text) {
      return Optional.of(text.value().strip());
    }
    if (value instanceof JsonTree.Num number) {
      return Optional.of(number(number.value(), decimalComma));
    }
    if (value instanceof JsonTree.Bool bool) {
      return Optional.of(bool.value() ? "yes" : "no");
    }
    if (value instanceof JsonTree.Nothing) {
      return Optional.of("");
    }
    return value instanceof JsonTree.Arr list ? list(list, decimalComma) : Optional.empty();
  }

  private static Optional<String> list(JsonTree.Arr list, boolean decimalComma) {
    List<String> texts = new ArrayList<>();
    for (JsonTree item : list.items()) {
      Optional<String> text =
          item instanceof JsonTree.Arr ? Optional.empty() : text(item, decimalComma);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      texts.add(text.get());
    }
    return Optional.of(String.join("|", texts));
  }

  /** The number in digits; one that no cell can hold stays as it was written. */
  static String number(BigDecimal number, boolean decimalComma) {
    BigDecimal bare = number.stripTrailingZeros();
    if (bare.precision() - bare.scale() > LONGEST || bare.scale() > LONGEST) {
      return number.toString();
    }
    String text = bare.toPlainString();
    return decimalComma ? text.replace('.', ',') : text;
  }

  /** True for a factor by which figures may be scaled. */
  static boolean factor(BigDecimal factor) {
    return factor.compareTo(LEAST) >= 0 && factor.compareTo(MOST) <= 0;
  }

  /** A figure times a factor; whole figures are rounded, half a piece up. */
  static BigDecimal scaled(BigDecimal figure, BigDecimal factor, boolean whole) {
    return figure.multiply(factor).setScale(whole ? 0 : DIGITS, RoundingMode.HALF_UP);
  }

  /** True when the text is the pattern, in which a star stands for any text. */
  static boolean fits(String pattern, String text) {
    if (pattern.equals(text)) {
      return true;
    }
    if (!pattern.contains("*")) {
      return false;
    }
    String[] parts = pattern.split("\\*", -1);
    StringBuilder regex = new StringBuilder(Pattern.quote(parts[0]));
    for (int i = 1; i < parts.length; i++) {
      regex.append(".*").append(Pattern.quote(parts[i]));
    }
    return Pattern.compile(regex.toString(), Pattern.DOTALL).matcher(text).matches();
  }
}
