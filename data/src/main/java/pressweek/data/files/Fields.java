package pressweek.data.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import pressweek.data.files.Header.Slot;
import pressweek.data.files.table.RawLine.Cells;
import pressweek.data.files.table.RawLine.Origin;

/**
 * The cells of one row by column, read as what the column holds. Faults are collected; the value is
 * then a default.
 */
final class Fields {
  /** Pieces, shots and the like in one cell. */
  static final int MOST_PIECES = 10_000_000;

  /** Sizes, weights and times in one cell. */
  static final double LARGEST = 1_000_000;

  /** Characters of an id. */
  private static final int LONGEST_ID = 100;

  private static final BigDecimal CENT_THOUSANDTHS = BigDecimal.valueOf(100_000);

  /**
   * A fault of the row.
   *
   * @param column column; empty for the row as a whole
   * @param kind what is the same about faults of this kind
   * @param message what we saw; what we expected
   */
  record Fault(String column, String kind, String message) {}

  private final Columns columns;
  private final Header header;
  private final Times times;
  private final boolean decimalComma;
  private final Cells row;
  private final At own;
  private final At at;
  private final List<Fault> faults = new ArrayList<>();

  /**
   * The fields of a row.
   *
   * @param table the table that it is a row of
   * @param row its cells
   */
  Fields(TableContext table, Cells row) {
    this.columns = table.columns();
    this.header = table.header();
    this.times = table.times();
    this.decimalComma = table.decimalComma();
    this.row = row;
    this.own = new At(table.file(), row.line());
    this.at =
        row.origin().filter(o -> o.line() > 0).map(o -> new At(o.file(), o.line())).orElse(own);
  }

  /** Where the row stands, or where a scenario names it. */
  At at() {
    return at;
  }

  /** Where the cell stands that a column has in the row. */
  At at(String column) {
    Optional<Origin> origin = row.origin();
    if (origin.isEmpty()) {
      return own;
    }
    Slot slot = header.slots().get(column);
    Integer line = slot == null ? null : origin.get().cells().get(slot.index());
    boolean added = own.line() == 0;
    return line != null ? new At(origin.get().file(), line) : added || slot == null ? at : own;
  }

  List<Fault> faults() {
    return faults;
  }

  /** Adds a fault that the row's reader found. */
  void fault(String column, String kind, String message) {
    faults.add(new Fault(column, kind, message));
  }

  /** The column as its file calls it. */
  String label(String column) {
    Slot slot = header.slots().get(column);
    return slot == null ? column : slot.label();
  }

  /** The column and its cell, as a message begins. */
  String seen(String column) {
    return label(column) + " \"" + text(column) + "\"";
  }

  /** The text of the cell; empty for an empty cell or a column that is not there. */
  String text(String column) {
    Slot slot = header.slots().get(column);
    return slot == null || slot.index() >= row.cells().size() ? "" : row.cells().get(slot.index());
  }

  /** A text with a decimal point where the file has decimal commas. */
  String pointed(String text) {
    return decimalComma ? text.replace(',', '.') : text;
  }

  /** The text of a cell that must be filled. */
  String required(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      fault(column, "empty", label(column) + " is empty; expected a value");
    }
    return text;
  }

  /** An id of one line and of a length that lists can show; must be filled. */
  String id(String column) {
    String text = required(column);
    if (text.length() > LONGEST_ID || text.chars().anyMatch(Character::isISOControl)) {
      String start = text.substring(0, Math.min(20, text.length())).replaceAll("\\p{Cntrl}", " ");
      fault(
          column,
          "id",
          label(column)
              + " \""
              + start
              + "...\"; expected one line of at most "
              + LONGEST_ID
              + " characters");
      return "";
    }
    return text;
  }

  /** The parts of a list in a cell, empty ones left out. */
  List<String> list(String column) {
    return Arrays.stream(text(column).split("\\|"))
        .map(String::strip)
        .filter(t -> !t.isEmpty())
        .toList();
  }

  /** A whole number of a cell that may be empty. */
  OptionalInt whole(String column, int least, int most) {
    String text = text(column);
    if (text.isEmpty()) {
      return OptionalInt.empty();
    }
    Optional<BigDecimal> number = number(column, true);
    if (number.isEmpty()) {
      return OptionalInt.empty();
    }
    String range =
        "; expected a whole number from " + Numbers.show(least) + " to " + Numbers.show(most);
    if (number.get().stripTrailingZeros().scale() > 0) {
      fault(column, "fraction", seen(column) + " is not a whole number" + range);
      return OptionalInt.empty();
    }
    if (!within(number.get(), least, most)) {
      fault(column, "range", seen(column) + " is out of range" + range);
      return OptionalInt.empty();
    }
    return OptionalInt.of(number.get().intValueExact());
  }

  /** A whole number of a cell that must be filled. */
  int requiredWhole(String column, int least, int most) {
    required(column);
    return whole(column, least, most).orElse(least);
  }

  /** A number in the unit of the column; the limits count in that unit. */
  OptionalDouble decimal(String column, double least, double most) {
    Optional<BigDecimal> number = exact(column, least, most);
    return number.isPresent()
        ? OptionalDouble.of(number.get().doubleValue())
        : OptionalDouble.empty();
  }

  /** A size, a weight or the like: more than nothing. */
  OptionalDouble size(String column) {
    return decimal(column, 0.0001, LARGEST);
  }

  /** Money, thousandths of a cent. */
  OptionalLong money(String column) {
    Optional<BigDecimal> number = exact(column, 0, 100_000_000);
    return number.isPresent()
        ? OptionalLong.of(scaled(number.get(), CENT_THOUSANDTHS, RoundingMode.HALF_UP))
        : OptionalLong.empty();
  }

  /** A number times a factor, rounded. */
  OptionalInt scaled(String column, int factor, double most, RoundingMode rounding) {
    Optional<BigDecimal> number = exact(column, 0, most);
    return number.isPresent()
        ? OptionalInt.of((int) scaled(number.get(), BigDecimal.valueOf(factor), rounding))
        : OptionalInt.empty();
  }

  private static long scaled(BigDecimal number, BigDecimal factor, RoundingMode rounding) {
    return number.multiply(factor).setScale(0, rounding).longValueExact();
  }

  private Optional<BigDecimal> exact(String column, double least, double most) {
    if (text(column).isEmpty()) {
      return Optional.empty();
    }
    Optional<BigDecimal> number = number(column, false);
    if (number.isPresent() && !within(number.get(), least, most)) {
      fault(
          column,
          "range",
          seen(column)
              + " is out of range; expected "
              + Numbers.show(least)
              + " to "
              + Numbers.show(most)
              + unit(column));
      return Optional.empty();
    }
    return number;
  }

  private String unit(String column) {
    return columns
        .column(column)
        .map(c -> c.unit().symbol())
        .filter(u -> !u.isEmpty())
        .map(u -> " " + u)
        .orElse("");
  }

  private static boolean within(BigDecimal number, double least, double most) {
    return number.compareTo(BigDecimal.valueOf(least)) >= 0
        && number.compareTo(BigDecimal.valueOf(most)) <= 0;
  }

  private Optional<BigDecimal> number(String column, boolean whole) {
    String text = text(column);
    if (Numbers.ambiguous(text, decimalComma, whole)) {
      fault(
          column,
          "ambiguous",
          seen(column)
              + " may be "
              + text.replace(".", "")
              + " or a decimal; expected it without the point, or with a"
              + " decimal comma");
      return Optional.empty();
    }
    Optional<BigDecimal> number = Numbers.parse(text, decimalComma);
    if (number.isEmpty()) {
      String form =
          whole
              ? "digits"
              : decimalComma
                  ? "digits, with a comma or point for decimals"
                  : "digits, with a point for decimals";
      fault(column, "number", seen(column) + " is not a number; expected " + form);
      return Optional.empty();
    }
    Slot slot = header.slots().get(column);
    return slot == null
        ? number
        : number.map(n -> slot.other().map(o -> Unit.convert(n, o)).orElse(n));
  }

  /** A time of a cell that may be empty. */
  Optional<When> time(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Optional<When> time = times.parse(text);
    if (time.isEmpty()) {
      fault(column, "date", seen(column) + " is not a date; expected " + times.expected(text));
      return Optional.empty();
    }
    if (!Times.plausible(time.get())) {
      fault(column, "year", seen(column) + " is out of range; expected " + Times.years());
      return Optional.empty();
    }
    return time;
  }

  /** A time of a cell that must be filled. */
  When requiredTime(String column) {
    required(column);
    return time(column).orElse(new When.Day(LocalDate.EPOCH));
  }

  /** Yes or no; no for an empty cell. */
  boolean flag(String column) {
    String text = text(column).toLowerCase(Locale.ROOT);
    boolean yes = List.of("yes", "y", "true", "1", "x").contains(text);
    if (!yes && !List.of("no", "n", "false", "0", "").contains(text)) {
      fault(column, "flag", seen(column) + " is neither yes nor no; expected yes or no");
    }
    return yes;
  }

  /** One of the words of an enum; empty for an empty cell. */
  <E extends Enum<E>> Optional<E> choice(String column, Class<E> type) {
    String word = text(column).toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    if (word.isEmpty()) {
      return Optional.empty();
    }
    E[] values = type.getEnumConstants();
    Optional<E> found = Arrays.stream(values).filter(v -> Columns.word(v).equals(word)).findFirst();
    if (found.isEmpty()) {
      fault(
          column,
          "choice",
          seen(column) + " is not known; expected " + String.join(", ", Columns.words(values)));
    }
    return found;
  }

  /** One of the words of an enum, from a cell that must be filled. */
  <E extends Enum<E>> E requiredChoice(String column, Class<E> type) {
    required(column);
    return choice(column, type).orElse(type.getEnumConstants()[0]);
  }
}
