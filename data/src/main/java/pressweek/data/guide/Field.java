package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a field of an item code reads: a symbol of a table, or a number. */
public sealed interface Field {
  /** The field's name, as in {@code {colour}}; it stands in messages, too. */
  String name();

  /** The attribute that it sets. */
  String attribute();

  /**
   * Symbols and what each means.
   *
   * @param name name
   * @param attribute attribute that it sets
   * @param entries what each symbol means, in the order of the guide
   */
  record Table(String name, String attribute, Map<String, Entry> entries) implements Field {
    public Table {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }
  }

  /**
   * What a symbol means.
   *
   * @param sets values by attribute
   * @param words words for people, the first one for display; may be empty
   */
  record Entry(Map<String, String> sets, List<String> words) {
    public Entry {
      sets = Collections.unmodifiableMap(new LinkedHashMap<>(sets));
      words = List.copyOf(words);
    }
  }

  /**
   * A number written with digits and a point.
   *
   * @param name name
   * @param attribute attribute that it sets
   * @param unit {@code mm}, {@code in}, or any other text, which is only shown; may be empty
   * @param range which numbers are possible
   */
  record Number(String name, String attribute, String unit, Range range) implements Field {
    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

    /**
     * The attribute's value: inches become millimetres where the attribute's name asks for them.
     */
    String value(BigDecimal written) {
      boolean convert = unit.equals("in") && attribute.endsWith("_mm");
      BigDecimal value = convert ? written.multiply(MM_PER_INCH) : written;
      return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    /** The possible numbers in words, for example {@code 10 to 60 mm in steps of 5}. */
    String words() {
      return (range.words() + " " + unit).strip()
          + range.step().map(step -> " in steps of " + step.toPlainString()).orElse("");
    }
  }

  /**
   * The numbers from {@code min} to {@code max}, both included, {@code step} apart from {@code min}
   * or else from 0.
   */
  record Range(Optional<BigDecimal> min, Optional<BigDecimal> max, Optional<BigDecimal> step) {
    boolean holds(BigDecimal number) {
      boolean low = min.map(least -> number.compareTo(least) >= 0).orElse(true);
      boolean high = max.map(most -> number.compareTo(most) <= 0).orElse(true);
      return low && high && step.map(by -> onStep(number, by)).orElse(true);
    }

    private boolean onStep(BigDecimal number, BigDecimal by) {
      return number.subtract(min.orElse(BigDecimal.ZERO)).remainder(by).signum() == 0;
    }

    private String words() {
      if (min.isPresent() && max.isPresent()) {
        return min.get().toPlainString() + " to " + max.get().toPlainString();
      }
      if (min.isPresent()) {
        return "at least " + min.get().toPlainString();
      }
      return max.map(most -> "at most " + most.toPlainString()).orElse("a number");
    }
  }
}
