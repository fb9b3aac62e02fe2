package pressweek.data.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import pressweek.data.files.table.CsvTable;
import pressweek.data.files.table.FileScan;
import pressweek.data.files.table.TableSource;
import pressweek.data.files.table.XlsxTable;
import pressweek.data.files.table.XlsxTable.NotWorkbook;

/** Opens tables by what their names and bytes say they are. */
final class TableFiles {
  private TableFiles() {}

  /** The table in a file; empty, with an error among the findings, when it holds none. */
  static Optional<TableSource> open(Path path, FileScan scan, Findings findings)
      throws IOException {
    String name = String.valueOf(path.getFileName());
    if (name.toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      return workbook(path, name, findings);
    }
    if (!scan.content().text()) {
      boolean zip = scan.content() == FileScan.Content.ZIP;
      String seen = zip ? "the file is an archive or workbook" : "the file is not text";
      String cure = zip ? "CSV, or the name " + name.replace(".csv", ".xlsx") : "CSV";
      findings.error(new At(name, 0), seen + "; expected " + cure);
      return Optional.empty();
    }
    if (scan.content() == FileScan.Content.WINDOWS_1252) {
      findings.warning(
          new At(name, scan.oddLine()),
          "the line has bytes that are not UTF-8; the file is read as Windows-1252");
    }
    return Optional.of(CsvTable.open(path, scan.content()));
  }

  private static Optional<TableSource> workbook(Path path, String name, Findings findings)
      throws IOException {
    try {
      return Optional.of(XlsxTable.open(path));
    } catch (NotWorkbook e) {
      findings.error(new At(name, 0), String.valueOf(e.getMessage()));
      return Optional.empty();
    }
  }
}
