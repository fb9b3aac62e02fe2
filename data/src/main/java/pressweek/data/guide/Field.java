package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a field of an item code reads: a symbol of a table, a number, or the mark of a special. */
public sealed interface Field {
  /** Name, attribute, width. */
  Frame frame();

  /** The field's name, as in {@code {colour}}; it stands in messages, too. */
  default String name() {
    return frame().name();
  }

  /** The attribute that it sets; empty for a table whose entries set only what they name. */
  default String attribute() {
    return frame().attribute();
  }

  /**
   * What fields of all kinds have.
   *
   * @param name name
   * @param attribute attribute that the field sets; empty for none of its own
   * @param width characters that it takes; 0 for as many as its text has
   * @param fill characters that fill it
   * @param line line of the guide
   */
  record Frame(String name, String attribute, int width, Fill fill, int line) {}

  /**
   * Symbols and what each means.
   *
   * @param frame name, attribute, width
   * @param entries what each symbol means, in the order of the guide
   * @param symbols the same symbols for looking up
   */
  record Table(Frame frame, Map<String, Entry> entries, Symbols symbols) implements Field {
    public Table {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    /** What one of its symbols means. */
    Entry entry(String symbol) {
      return entries.getOrDefault(symbol, Entry.NOTHING);
    }
  }

  /**
   * What a symbol means.
   *
   * @param sets values by attribute; an empty value is: does not apply
   * @param words words for people, the first one for display; may be empty
   * @param line line of the guide
   */
  record Entry(Map<String, String> sets, List<String> words, int line) {
    static final Entry NOTHING = new Entry(Map.of(), List.of(), 0);

    public Entry {
      sets = Collections.unmodifiableMap(new LinkedHashMap<>(sets));
      words = List.copyOf(words);
    }

    /** The first of its words; empty when it has none. */
    public String display() {
      return words.isEmpty() ? "" : words.get(0);
    }
  }

  /**
   * A number written with digits and a point, or with digits alone when its decimals are implied.
   *
   * @param frame name, attribute, width
   * @param unit {@code mm}, {@code in}, or any other text, which is only shown; may be empty
   * @param decimals digits behind the implied point; 0 for none
   * @param range which numbers are possible
   */
  record Number(Frame frame, String unit, int decimals, Range range) implements Field {
    static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

    /**
     * The attribute's value: inches become millimetres where the attribute's name asks for them.
     */
    String value(BigDecimal written) {
      BigDecimal value = converts() ? written.multiply(MM_PER_INCH) : written;
      return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    /** True when it is written in inches and kept in millimetres. */
    boolean converts() {
      return unit.equals("in") && attribute().endsWith("_mm");
    }

    /** True when a code can say this value of the attribute. */
    public boolean canSay(BigDecimal value) {
      return SlotWriter.digits(this, value.toPlainString()).isPresent();
    }

    /** The possible numbers in words, for example {@code 10 to 60 mm in steps of 5}. */
    public String words() {
      String digits =
          decimals == 0 ? "" : ", written without the point and with " + decimals + " decimals";
      return (range.words() + " " + unit).strip()
          + range.step().map(step -> " in steps of " + step.toPlainString()).orElse("")
          + digits;
    }
  }

  /**
   * A mark which says that the item has a record of its own.
   *
   * @param frame name, attribute, width
   * @param marks the possible marks
   */
  record Special(Frame frame, Marks marks) implements Field {}

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
