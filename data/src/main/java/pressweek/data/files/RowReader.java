package pressweek.data.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.Fields.Fault;
import pressweek.data.files.TableReader.BadRow;
import pressweek.data.files.table.RawLine;
import pressweek.data.files.table.TableSource;

/**
 * Reads the rows below a header.
 *
 * @param <T> a row
 */
final class RowReader<T> {
  /** Rows beyond which a file is not what a week needs. */
  private static final int MOST_ROWS = 500_000;

  private final TableSpec<T> spec;
  private final TableContext context;
  private final BadRow bad;
  private final Findings findings;
  private final Map<String, At> lines = new HashMap<>();
  private final List<T> good = new ArrayList<>();

  RowReader(TableSpec<T> spec, TableContext context, BadRow bad, Findings findings) {
    this.spec = spec;
    this.context = context;
    this.bad = bad;
    this.findings = findings;
  }

  /** The good rows. */
  List<T> read(TableSource source) throws IOException {
    int rows = 0;
    Optional<RawLine> line = source.next();
    while (line.isPresent() && rows < MOST_ROWS) {
      rows++;
      take(line.get(), source.shortRows());
      line = source.next();
    }
    String file = context.file();
    if (line.isPresent()) {
      findings.error(
          new At(file, line.get().line()),
          "the file has more than " + Numbers.show(MOST_ROWS) + " rows; expected a week's");
    }
    if (rows == 0 && spec.columns().file().required()) {
      findings.error(
          new At(file, 0), "the file has no row below its header; expected at least one");
    }
    return good;
  }

  private void take(RawLine line, boolean shortRows) {
    At at = new At(context.file(), line.line());
    if (line instanceof RawLine.Fault fault) {
      bad.take(at, Optional.empty(), List.of(new Fault("", "torn", fault.message())));
      return;
    }
    RawLine.Cells cells = (RawLine.Cells) line;
    Fields fields = new Fields(context, cells);
    width(cells, shortRows).ifPresent(fields.faults()::add);
    T row = spec.row().apply(fields);
    String id = spec.id().apply(row);
    if (fields.faults().isEmpty() && !id.isEmpty()) {
      At before = lines.putIfAbsent(id, fields.at());
      if (before != null) {
        boolean same = before.file().equals(fields.at().file());
        String where = same ? "line " + before.line() : before.toString();
        fields.fault("", "twice", id + " is also in " + where + "; expected it once");
      }
    }
    if (fields.faults().isEmpty()) {
      good.add(row);
    } else {
      bad.take(fields.at(), Optional.of(fields), fields.faults());
    }
  }

  private Optional<Fault> width(RawLine.Cells row, boolean shortRows) {
    int width = context.header().width();
    int last = row.cells().size();
    while (last > width && row.cells().get(last - 1).isEmpty()) {
      last--;
    }
    if (last > width || (last < width && !shortRows)) {
      String message = "the row has " + last + " cells; expected " + width + " as in the header";
      return Optional.of(new Fault("", "width", message));
    }
    return Optional.empty();
  }
}
