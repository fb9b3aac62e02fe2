package pressweek.reports.write;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Cell;
import pressweek.reports.listing.Column;
import pressweek.reports.listing.Listing;

/**
 * A list as CSV by RFC 4180: commas, CRLF, a header row. Lists within a cell are separated by
 * {@code |}. Text that a spreadsheet would take for a formula is made harmless by {@link
 * FormulaGuard}; numbers and times stay as they are.
 */
final class ListingCsv {
  private ListingCsv() {}

  /** The list as text. */
  static String csv(Listing list) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
      printer.printRecord(list.columns().stream().map(Column::name));
      for (List<Cell> row : list.rows()) {
        printer.printRecord(row.stream().map(ListingCsv::text));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a StringBuilder cannot fail", e);
    }
    return out.toString();
  }

  /** A cell as text, as a spreadsheet may have it. */
  static String text(Cell cell) {
    if (cell instanceof Cell.Text text) {
      return FormulaGuard.guarded(text.text());
    }
    if (cell instanceof Cell.Texts texts) {
      return FormulaGuard.guarded(String.join("|", texts.texts()));
    }
    if (cell instanceof Cell.Number number) {
      return number.value().toPlainString();
    }
    return PlantClock.iso(((Cell.Time) cell).at());
  }
}
