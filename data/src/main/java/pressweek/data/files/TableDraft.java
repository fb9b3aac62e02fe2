package pressweek.data.files;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.table.CsvText;
import pressweek.data.files.table.FileScan;
import pressweek.data.files.table.RawLine;
import pressweek.data.files.table.TableSource;
import pressweek.data.files.table.TextFile;

/**
 * What a table of a plant's folder would be with some cells exchanged and rows added. The file
 * itself stays as it is; in the draft all else is as in the file, to the byte. Of a workbook the
 * draft is a CSV file with all of its rows; where there is no file it is a new one.
 */
public final class TableDraft {
  private final Path path;
  private final Columns columns;
  private final Map<String, String> headings;
  private final CsvText text;
  private final Charset charset;
  private final DraftOrigin origin;

  /** Lines in which the rows below the header begin in the file. */
  private final List<Integer> lines;

  private boolean changed;

  private TableDraft(Path path, Columns columns, Map<String, String> headings, Source source) {
    this.path = path;
    this.columns = columns;
    this.headings = headings;
    this.text = source.text();
    this.charset = source.charset();
    this.origin = source.origin();
    this.lines = source.lines();
  }

  private record Source(CsvText text, Charset charset, DraftOrigin origin, List<Integer> lines) {}

  /**
   * A draft of a table that can be read without an error.
   *
   * @param folder the plant's folder
   * @param file which table
   * @param fresh columns that a new file begins with
   * @throws IOException when the file cannot be read
   */
  public static TableDraft of(Folder folder, InputFile file, List<String> fresh)
      throws IOException {
    Columns columns = Tables.columns(file);
    Map<String, String> headings = TablesBeside.headings(folder).getOrDefault(file, Map.of());
    Path csv = folder.path().resolve(file.fileName());
    Path workbook = folder.path().resolve(file.workbookName());
    if (Files.isRegularFile(csv)) {
      return new TableDraft(csv, columns, headings, csv(csv));
    }
    if (Files.isRegularFile(workbook)) {
      return new TableDraft(workbook, columns, headings, workbook(workbook));
    }
    Source source =
        new Source(CsvText.of(fresh), StandardCharsets.UTF_8, DraftOrigin.NONE, List.of());
    return new TableDraft(csv, columns, headings, source);
  }

  private static Source csv(Path path) throws IOException {
    FileScan scan = FileScan.of(path);
    Charset charset = TextFile.charset(scan.content());
    CsvText text = CsvText.of(new String(Files.readAllBytes(path), charset));
    DraftOrigin origin = scan.content().wide() ? DraftOrigin.WIDE_TEXT : DraftOrigin.TEXT;
    return new Source(text, charset, origin, text.lines());
  }

  private static Source workbook(Path path) throws IOException {
    Optional<TableSource> source = TableFiles.open(path, FileScan.of(path), new Findings());
    List<RawLine.Cells> rows = new ArrayList<>();
    if (source.isPresent()) {
      try (TableSource table = source.get()) {
        for (Optional<RawLine> row = table.next(); row.isPresent(); row = table.next()) {
          if (row.get() instanceof RawLine.Cells cells) {
            rows.add(cells);
          }
        }
      }
    }
    int width = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
    CsvText text = CsvText.of(wide(rows.get(0).cells(), width));
    for (RawLine.Cells row : rows.subList(1, rows.size())) {
      text.add(wide(row.cells(), width));
    }
    List<Integer> lines = rows.stream().skip(1).map(RawLine.Cells::line).toList();
    return new Source(text, StandardCharsets.UTF_8, DraftOrigin.WORKBOOK, lines);
  }

  private static List<String> wide(List<String> cells, int width) {
    Map<Integer, String> byPlace = new HashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      byPlace.put(i, cells.get(i));
    }
    return CsvText.row(width, byPlace);
  }

  /** What it comes from. */
  public DraftOrigin origin() {
    return origin;
  }

  /** The file that it is a draft of, whether it is there or not. */
  public Path path() {
    return path;
  }

  /** True when something was exchanged or added. */
  public boolean isChanged() {
    return changed;
  }

  /** The draft as a file. */
  public byte[] bytes() {
    return text.toString().getBytes(charset);
  }

  /**
   * Exchanges a figure; a column that the table does not have is added.
   *
   * @param line line of the row, as the folder's findings name it
   * @param column name of the column
   * @param value the figure with a decimal point
   */
  public void set(int line, String column, String value) {
    int place = place(column);
    int row = lines.indexOf(line);
    text.set(text.lines().get(row), place, pointed(value, place));
    changed = true;
  }

  /**
   * Adds a row.
   *
   * @param cells values by column; empty ones need no column
   */
  public void add(Map<String, String> cells) {
    Map<Integer, String> byPlace = new LinkedHashMap<>();
    cells.forEach(
        (column, value) -> {
          if (!value.isEmpty()) {
            int place = place(column);
            byPlace.put(place, isFigure(column) ? pointed(value, place) : value);
          }
        });
    text.add(CsvText.row(text.cells(text.headerLine()).size(), byPlace));
    changed = true;
  }

  private boolean isFigure(String column) {
    return columns.column(column).filter(c -> c.look() == Column.Look.DECIMAL).isPresent();
  }

  /** Where a column stands; one that is not there is added at the end. */
  private int place(String column) {
    List<String> header = text.cells(text.headerLine());
    Optional<Header> read =
        new HeaderReader(columns, headings, new Findings())
            .read("", new RawLine.Cells(text.headerLine(), header));
    Header.Slot slot = read.map(h -> h.slots().get(column)).orElse(null);
    if (slot != null) {
      return slot.index();
    }
    int place = header.size();
    text.set(text.headerLine(), place, column);
    text.lines().forEach(line -> text.set(line, place, ""));
    return place;
  }

  /** With a decimal comma where the column is written so. */
  private String pointed(String value, int place) {
    boolean comma =
        text.separator() != ','
            && text.lines().stream()
                .map(text::cells)
                .anyMatch(cells -> place < cells.size() && cells.get(place).contains(","));
    return comma ? value.replace('.', ',') : value;
  }
}
