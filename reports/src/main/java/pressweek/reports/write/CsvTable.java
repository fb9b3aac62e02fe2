package pressweek.reports.write;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A table as CSV by RFC 4180: commas, CRLF, a header row. Lists within a cell are separated by
 * {@code |}. Text that a spreadsheet would take for a formula is made harmless by {@link
 * FormulaGuard}; numbers and times stay as they are.
 *
 * @param <R> what a row is made from
 */
final class CsvTable<R> {
  private final List<String> names = new ArrayList<>();
  private final List<Function<R, String>> cells = new ArrayList<>();

  /** Adds a column of text. */
  CsvTable<R> text(String name, Function<R, String> cell) {
    return column(name, row -> FormulaGuard.guarded(cell.apply(row)));
  }

  /** Adds a column of lists of texts. */
  CsvTable<R> list(String name, Function<R, List<String>> cell) {
    return text(name, row -> String.join("|", cell.apply(row)));
  }

  /** Adds a column of numbers or times, which the program itself has written. */
  CsvTable<R> figure(String name, Function<R, String> cell) {
    return column(name, cell);
  }

  /** Adds a column of whole numbers. */
  CsvTable<R> number(String name, Function<R, Integer> cell) {
    return column(name, row -> Integer.toString(cell.apply(row)));
  }

  private CsvTable<R> column(String name, Function<R, String> cell) {
    names.add(name);
    cells.add(cell);
    return this;
  }

  /** The table with these rows. */
  String csv(List<R> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
      printer.printRecord(names);
      for (R row : rows) {
        printer.printRecord(cells.stream().map(c -> c.apply(row)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a StringBuilder cannot fail", e);
    }
    return out.toString();
  }
}
