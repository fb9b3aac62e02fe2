package pressweek.examples;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * A CSV file in the making (RFC 4180, but with line feeds alone, so that its bytes are the same
 * everywhere).
 */
final class Sheet {
  private final int columns;
  private final StringBuilder text = new StringBuilder();

  Sheet(String... columns) {
    this.columns = columns.length;
    row((Object[]) columns);
  }

  /** Adds a row with a cell for each column. */
  void row(Object... cells) {
    if (cells.length != columns) {
      throw new IllegalArgumentException(
          "row of " + cells.length + " cells in a sheet of " + columns + " columns");
    }
    text.append(Arrays.stream(cells).map(Sheet::quoted).collect(Collectors.joining(",")));
    text.append('\n');
  }

  /** The whole file. */
  String text() {
    return text.toString();
  }

  /** Tenths as a decimal, for example 125 as {@code 12.5}. */
  static String tenths(int tenths) {
    return tenths / 10 + "." + tenths % 10;
  }

  private static String quoted(Object cell) {
    String value = cell.toString();
    boolean plain = value.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? value : '"' + value.replace("\"", "\"\"") + '"';
  }
}
