package pressweek.data.files.table;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.table.TextLines.TextLine;

/**
 * A CSV file by RFC 4180, separated by commas, semicolons or tabs.
 *
 * <p>Read with a lexer of our own: a message must name the line in which a row begins, and one
 * quote that is never closed must not swallow the rows after it. Rows that the lexer cannot tell
 * apart become a {@link RawLine.Fault}, and reading goes on with the next line.
 */
public final class CsvTable implements TableSource {
  /** A quoted cell longer than this, or over more lines, counts as one that was never closed. */
  private static final int LONGEST_CELL = 1 << 15;

  private static final int MOST_LINES = 200;

  /** After so many unclosed quotes the rest of the file is not worth reading twice. */
  private static final int MOST_UNCLOSED = 100;

  private final TextLines lines;
  private final char separator;
  private int unclosed;

  private CsvTable(TextLines lines, char separator) {
    this.lines = lines;
    this.separator = separator;
  }

  /** Opens a file whose bytes have been found to be text. */
  public static CsvTable open(Path file, FileScan.Content content) throws IOException {
    return of(TextFile.open(file, content));
  }

  /** Reads a text. */
  static CsvTable of(Reader text) throws IOException {
    TextLines lines = new TextLines(text);
    List<TextLine> ahead = new ArrayList<>();
    Optional<TextLine> line = lines.next();
    while (line.isPresent() && Blank.strip(line.get().text()).isEmpty()) {
      line = lines.next();
    }
    String first = line.map(TextLine::text).orElse("");
    Optional<Character> declared = Separator.declared(first);
    if (declared.isEmpty()) {
      line.ifPresent(ahead::add);
    }
    lines.putBack(ahead);
    return new CsvTable(lines, declared.orElse(Separator.guess(first)));
  }

  @Override
  public Optional<RawLine> next() throws IOException {
    Optional<TextLine> line = lines.next();
    while (line.isPresent() && unclosed < MOST_UNCLOSED) {
      RawLine row = row(line.get());
      if (!(row instanceof RawLine.Cells cells && cells.blank())) {
        return Optional.of(row);
      }
      line = lines.next();
    }
    return Optional.empty();
  }

  private RawLine row(TextLine first) throws IOException {
    if (first.torn()) {
      return new RawLine.Fault(
          first.number(), "the line is longer than a million characters; expected a row");
    }
    CsvRow row = new CsvRow(separator);
    row.take(first.text());
    List<TextLine> more = new ArrayList<>();
    while (row.open() && row.length() < LONGEST_CELL && more.size() < MOST_LINES) {
      Optional<TextLine> next = lines.next();
      if (next.isEmpty()) {
        break;
      }
      more.add(next.get());
      row.take(next.get().text());
    }
    if (row.open()) {
      unclosed++;
      lines.putBack(more);
      String gaveUp =
          unclosed == MOST_UNCLOSED ? "; after many of these the rest was not read" : "";
      return new RawLine.Fault(
          first.number(),
          "a quote in cell " + row.cell() + " is not closed; expected a closing \"" + gaveUp);
    }
    if (row.torn()) {
      lines.putBack(more);
      return new RawLine.Fault(
          first.number(),
          "text follows the closing quote of cell "
              + row.cell()
              + "; expected a separator, or the quote doubled");
    }
    return new RawLine.Cells(first.number(), row.cells());
  }

  @Override
  public boolean decimalComma() {
    return separator != ',';
  }

  @Override
  public boolean shortRows() {
    return false;
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
