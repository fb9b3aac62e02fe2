package pressweek.reports.write;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pressweek.data.files.StandardRow;

/** Writes recorded cycles as {@code standards.csv} is read, with all of its columns. */
public final class StandardsCsv {
  private static final int THOUSANDTHS = 3;
  private static final List<String> COLUMNS =
      List.of(
          "mold",
          "resin",
          "press",
          "cycle_s",
          "load_s",
          "cure_s",
          "scrap_pct",
          "startup_shots",
          "operators");

  private StandardsCsv() {}

  /** The rows as a table by RFC 4180. */
  public static String csv(List<StandardRow> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
      printer.printRecord(COLUMNS);
      for (StandardRow row : rows) {
        printer.printRecord(
            row.mold(),
            row.resin(),
            row.press(),
            decimal(row.cycleS()),
            decimal(row.loadS()),
            decimal(row.cureS()),
            decimal(row.scrapPct()),
            whole(row.startupShots()),
            thousandths(row.operatorThousandths()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a StringBuilder cannot fail", e);
    }
    return out.toString();
  }

  private static String decimal(OptionalDouble value) {
    return value.isPresent() ? decimal(value.getAsDouble()) : "";
  }

  private static String decimal(double value) {
    return plain(BigDecimal.valueOf(value));
  }

  private static String whole(OptionalInt value) {
    return value.isPresent() ? Integer.toString(value.getAsInt()) : "";
  }

  private static String thousandths(OptionalInt value) {
    return value.isPresent() ? plain(BigDecimal.valueOf(value.getAsInt(), THOUSANDTHS)) : "";
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
