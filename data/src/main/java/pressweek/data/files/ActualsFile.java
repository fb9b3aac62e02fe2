package pressweek.data.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.table.FileScan;

/**
 * What runs took, as a table: {@code actuals.csv}. It is read as the tables of the folder are, with
 * the plant's own headings and date format.
 *
 * <pre>
 * run,date,press,mold,resin,planned_cycle_s,real_cycle_s,planned_scrap_pct,real_scrap_pct
 * R101,2026-11-03,V1,M-LV90-1,PP,48,49.5,3,2.4
 * </pre>
 */
public final class ActualsFile {
  private ActualsFile() {}

  /**
   * What was read.
   *
   * @param rows good rows whose press and mold the plant has
   * @param findings what is wrong with the others, and warnings
   */
  public record Reading(List<ActualRow> rows, List<InputError> findings) {
    public Reading {
      rows = List.copyOf(rows);
      findings = List.copyOf(findings);
    }

    /** The findings that are errors. */
    public List<InputError> errors() {
      return findings.stream().filter(f -> f.severity() == InputError.Severity.ERROR).toList();
    }
  }

  /**
   * Reads what runs took.
   *
   * @param file the table, CSV or XLSX, wherever it lies
   * @param folder the plant's folder
   * @throws IOException when the file cannot be read at all; whatever it holds is a finding
   */
  public static Reading read(Path file, Folder folder) throws IOException {
    Findings findings = new Findings();
    TableReader reader = TablesBeside.reader(file, folder, findings);
    List<ActualRow> rows = reader.read(ActualTables.ACTUALS, file, FileScan.of(file));
    Set<String> presses =
        folder.floor().presses().stream().map(PressRow::press).collect(Collectors.toSet());
    Set<String> molds =
        folder.floor().molds().stream().map(MoldRow::mold).collect(Collectors.toSet());
    List<ActualRow> known =
        rows.stream()
            .filter(
                row ->
                    known(row, "press", row.press(), presses, findings)
                        && known(row, "mold", row.to().mold(), molds, findings))
            .toList();
    return new Reading(known, findings.list());
  }

  private static boolean known(
      ActualRow row, String column, String value, Set<String> known, Findings findings) {
    if (known.contains(value)) {
      return true;
    }
    String cure =
        Nearest.of(value, known)
            .map(n -> "did you mean \"" + n + "\"?")
            .orElse("expected one of the plant's files");
    String seen = column + " \"" + value + "\" is not known, the run is left out; ";
    findings.add(
        new InputError(
            InputError.Severity.WARNING, row.at().file(), row.at().line(), column, seen + cure),
        "unknown");
    return false;
  }
}
