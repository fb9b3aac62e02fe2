package pressweek.data.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pressweek.data.files.Fields.Fault;
import pressweek.data.files.InputError.Severity;
import pressweek.data.files.table.FileScan;
import pressweek.data.files.table.RawLine;
import pressweek.data.files.table.TableSource;

/** Reads the tables of a folder, row by row; a bad row never stops the good ones. */
final class TableReader {
  /** What becomes of a row that cannot be read. */
  interface BadRow {
    /**
     * Takes the faults of a row.
     *
     * @param at where it stands
     * @param fields its cells; empty when the row itself is torn
     * @param faults what is wrong with it, never empty
     */
    void take(At at, Optional<Fields> fields, List<Fault> faults);
  }

  /** The table that is not there, to which a scenario may still add rows. */
  private static final TableSource NO_ROWS = new NoRows();

  private final InputFiles files;
  private final Scenario scenario;
  private final Map<InputFile, Map<String, String>> headings;
  private final Times times;
  private final Findings findings;

  /** A reader for the tables of a folder as they stand. */
  TableReader(
      InputFiles files,
      Map<InputFile, Map<String, String>> headings,
      Times times,
      Findings findings) {
    this(files, Scenario.none(), headings, times, findings);
  }

  /**
   * A reader for the tables of a folder.
   *
   * @param scenario what is changed in them
   * @param headings columns by the plant's own headings, by file
   * @param times how dates are written
   * @param findings where findings go
   */
  TableReader(
      InputFiles files,
      Scenario scenario,
      Map<InputFile, Map<String, String>> headings,
      Times times,
      Findings findings) {
    this.files = files;
    this.scenario = scenario;
    this.headings = headings;
    this.times = times;
    this.findings = findings;
  }

  /**
   * The good rows of a file whose faults are faults of the plant's own data; none when the file is
   * not there.
   */
  <T> List<T> read(TableSpec<T> spec) throws IOException {
    return read(
        spec,
        (at, fields, faults) -> {
          findings.broken(spec.columns().file());
          add(Severity.ERROR, at, fields, faults);
        });
  }

  /** Adds the faults of a row to the findings, each where its cell stands. */
  void add(Severity severity, At row, Optional<Fields> fields, List<Fault> faults) {
    for (Fault fault : faults) {
      At at = fields.map(f -> f.at(fault.column())).orElse(row);
      findings.add(
          new InputError(severity, at.file(), at.line(), fault.column(), fault.message()),
          fault.kind());
    }
  }

  /** The good rows of a file; the others go where they are told. */
  <T> List<T> read(TableSpec<T> spec, BadRow bad) throws IOException {
    InputFile file = spec.columns().file();
    List<String> names = files.named(file);
    if (names.isEmpty()) {
      if (file.required()) {
        findings.error(
            new At(file.fileName(), 0),
            "the file is missing; expected it with " + wanted(spec.columns()));
        return List.of();
      }
      return scenario.of(file).isEmpty() ? List.of() : rows(spec, file.fileName(), NO_ROWS, bad);
    }
    String name = names.get(0);
    FileScan scan = files.scan(name);
    if (names.size() > 1) {
      files.scan(names.get(1));
      findings.error(
          new At(name, 0), "the file stands beside " + names.get(1) + "; expected one of the two");
      return List.of();
    }
    Optional<TableSource> source = TableFiles.open(files.path(name), scan, findings);
    if (source.isEmpty()) {
      return List.of();
    }
    try (TableSource table = source.get()) {
      return rows(spec, name, table, bad);
    }
  }

  /** The good rows of a table wherever it lies; the faults of the others are errors. */
  <T> List<T> read(TableSpec<T> spec, Path file, FileScan scan) throws IOException {
    Optional<TableSource> source = TableFiles.open(file, scan, findings);
    if (source.isEmpty()) {
      return List.of();
    }
    try (TableSource table = source.get()) {
      String name = String.valueOf(file.getFileName());
      return rows(
          spec, name, table, (at, fields, faults) -> add(Severity.ERROR, at, fields, faults));
    }
  }

  private static String wanted(Columns columns) {
    return columns.list().stream()
        .filter(Column::required)
        .map(Column::name)
        .collect(Collectors.joining(", "));
  }

  private <T> List<T> rows(TableSpec<T> spec, String name, TableSource source, BadRow bad)
      throws IOException {
    Columns columns = spec.columns();
    Map<String, String> own = headings.getOrDefault(columns.file(), Map.of());
    ScenarioTable changes =
        new ScenarioTable(scenario, new ScenarioTable.Place(name, columns, own, times), findings);
    if (source == NO_ROWS) {
      Header header = changes.over(new Header(Map.of(), 0));
      TableContext context = new TableContext(name, columns, header, times, false);
      return new RowReader<>(spec, context, bad, findings).read(changes.over(source));
    }
    Optional<RawLine> first = source.next();
    if (first.isEmpty()) {
      findings.error(
          new At(name, 0), "the file is empty; expected a header row with " + wanted(columns));
      return List.of();
    }
    if (first.get() instanceof RawLine.Fault fault) {
      findings.error(new At(name, fault.line()), fault.message());
      return List.of();
    }
    Optional<Header> header =
        new HeaderReader(columns, own, findings).read(name, (RawLine.Cells) first.get());
    if (header.isEmpty()) {
      return List.of();
    }
    Header wider = changes.over(header.get());
    TableContext context = new TableContext(name, columns, wider, times, source.decimalComma());
    return new RowReader<>(spec, context, bad, findings).read(changes.over(source));
  }
}
