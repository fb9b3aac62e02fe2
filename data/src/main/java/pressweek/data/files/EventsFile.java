package pressweek.data.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import pressweek.data.files.table.FileScan;

/**
 * What happened on the floor, as a table: {@code events.csv}. It is read as the tables of the
 * folder are, with the plant's own headings and date format.
 *
 * <pre>
 * event,what,line,at,until,note
 * press-away,H1,,2026-12-01T09:30,2026-12-02T06:00,hydraulics
 * </pre>
 */
public final class EventsFile {
  private EventsFile() {}

  /**
   * What was read.
   *
   * @param rows good rows
   * @param findings what is wrong with the others, and warnings
   * @param sha256 SHA-256 of the file, hexadecimal
   */
  public record Reading(List<EventRow> rows, List<InputError> findings, String sha256) {
    public Reading {
      rows = List.copyOf(rows);
      findings = List.copyOf(findings);
    }
  }

  /**
   * Reads events.
   *
   * @param file the table, CSV or XLSX, wherever it lies
   * @param folder the plant's folder, for its headings and its date format
   * @throws IOException when the file cannot be read at all; whatever it holds is a finding
   */
  public static Reading read(Path file, Folder folder) throws IOException {
    Findings findings = new Findings();
    TableReader reader = TablesBeside.reader(file, folder, findings);
    FileScan scan = FileScan.of(file);
    List<EventRow> rows = reader.read(EventTables.EVENTS, file, scan);
    return new Reading(rows, findings.list(), scan.sha256());
  }
}
