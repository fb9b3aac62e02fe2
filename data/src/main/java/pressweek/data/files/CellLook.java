package pressweek.data.files;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import pressweek.data.files.Column.Look;

/** Tells whether cells look like what a column holds. */
final class CellLook {
  private static final Pattern DATE =
      Pattern.compile("\\d{1,4}[./-]\\d{1,2}[./-]\\d{1,4}([ T].*)?");
  private static final Pattern SRGB = Pattern.compile("#?[0-9a-fA-F]{6}");
  private static final List<String> FLAGS =
      List.of("yes", "no", "y", "n", "true", "false", "1", "0", "x", "ja", "nein");

  private final Times times;

  CellLook(Times times) {
    this.times = times;
  }

  /** True when cells of this look are hardly ever those of another column. */
  static boolean telling(Column column) {
    return column.look() == Look.TIME
        || column.look() == Look.CHOICE
        || column.look() == Look.COLOUR;
  }

  /** Whether nine of ten filled cells look like the column; empty when that cannot be told. */
  Optional<Boolean> fits(Column column, List<String> cells) {
    List<String> filled = cells.stream().filter(c -> !c.isEmpty()).toList();
    if (filled.isEmpty() || column.look() == Look.TEXT) {
      return Optional.empty();
    }
    Predicate<String> look = look(column);
    long fitting = filled.stream().filter(look).count();
    return Optional.of(fitting * 10 >= filled.size() * 9L);
  }

  private Predicate<String> look(Column column) {
    return switch (column.look()) {
      case TEXT -> cell -> true;
      case WHOLE ->
          cell -> number(cell).filter(n -> n.stripTrailingZeros().scale() <= 0).isPresent();
      case DECIMAL -> cell -> number(cell).isPresent();
      case TIME -> cell -> DATE.matcher(cell).matches() || times.parse(cell).isPresent();
      case FLAG -> cell -> FLAGS.contains(cell.toLowerCase(Locale.ROOT));
      case CHOICE -> cell -> column.choices().contains(cell.toLowerCase(Locale.ROOT));
      case COLOUR -> cell -> SRGB.matcher(cell).matches();
    };
  }

  private static Optional<BigDecimal> number(String cell) {
    return Numbers.parse(cell, true);
  }
}
