package pressweek.data.files;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;

/**
 * The unit that ends a column's name, and the other units that a plant may use instead.
 *
 * <p>Factors are exact by definition (NIST SP 811, appendix B: inch, pound, ounce, ton-force) but
 * for rounding of the tons-force to seven digits.
 */
enum Unit {
  NONE("", ""),
  KN(
      "_kn",
      "kN",
      new Other("_ton_us", "8.896443"),
      new Other("_ton_metric", "9.80665"),
      new Other("_ton_uk", "9.964016")),
  G("_g", "g", new Other("_oz", "28.349523125"), new Other("_lb", "453.59237")),
  MM("_mm", "mm", new Other("_in", "25.4")),
  CM2("_cm2", "cm2", new Other("_in2", "6.4516")),
  KG("_kg", "kg", new Other("_lb", "0.45359237")),
  C("_c", "C", new Other("_f", "fahrenheit"));

  /**
   * Another unit.
   *
   * @param suffix end of the column's name
   * @param factor how many of the metric unit one of it is
   */
  record Other(String suffix, String factor) {}

  private static final MathContext DIGITS = MathContext.DECIMAL64;
  private static final List<String> BARE_TONS =
      List.of("_ton", "_tons", "_tonne", "_tonnes", "_t", "_to");

  private final String suffix;
  private final String symbol;
  private final List<Other> others;

  Unit(String suffix, String symbol, Other... others) {
    this.suffix = suffix;
    this.symbol = symbol;
    this.others = List.of(others);
  }

  /** The unit as a person writes it. */
  String symbol() {
    return symbol;
  }

  /** The names that the column may have instead. */
  List<String> otherNames(String column) {
    return others.stream().map(o -> base(column) + o.suffix()).toList();
  }

  /** True when the name is this column's with a ton that may be one of three. */
  boolean bareTon(String column, String name) {
    return this == KN && BARE_TONS.stream().anyMatch(t -> name.equals(base(column) + t));
  }

  /** The name of a column without its unit. */
  String base(String column) {
    return column.substring(0, column.length() - suffix.length());
  }

  /** Which of the other units the name of a column ends with; empty for this one itself. */
  Optional<Other> other(String column, String name) {
    return others.stream().filter(o -> name.equals(base(column) + o.suffix())).findFirst();
  }

  /** A value of another unit in this one. */
  static BigDecimal convert(BigDecimal value, Other from) {
    if (from.suffix().equals("_f")) {
      return value
          .subtract(BigDecimal.valueOf(32))
          .multiply(BigDecimal.valueOf(5))
          .divide(BigDecimal.valueOf(9), DIGITS);
    }
    return value.multiply(new BigDecimal(from.factor()));
  }
}
