package pressweek.data.files.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;

/** The first sheet of an XLSX workbook, row by row. A row's line is its number in the sheet. */
public final class XlsxTable implements TableSource {
  /** Unpacked bytes beyond which a workbook is not opened. */
  private static final long LARGEST = 1L << 29;

  private final ReadableWorkbook workbook;
  private final Stream<Row> stream;
  private final Iterator<Row> rows;
  private final XlsxCell cells;
  private boolean broken;
  private int line;

  private XlsxTable(ReadableWorkbook workbook) throws IOException {
    this.workbook = workbook;
    this.stream = workbook.getFirstSheet().openStream();
    this.rows = stream.iterator();
    this.cells = new XlsxCell(workbook.isDate1904());
  }

  /**
   * Opens a workbook.
   *
   * @throws NotWorkbook when the file is not one, with what is the matter
   */
  public static XlsxTable open(Path file) throws IOException, NotWorkbook {
    checkSize(file);
    ReadableWorkbook workbook = workbook(file);
    try {
      return new XlsxTable(workbook);
    } catch (IOException | RuntimeException e) {
      workbook.close();
      throw broken(e);
    }
  }

  private static ReadableWorkbook workbook(Path file) throws NotWorkbook {
    try {
      return new ReadableWorkbook(file.toFile(), new ReadingOptions(true, true));
    } catch (IOException | RuntimeException e) {
      return withoutStyles(file);
    }
  }

  /** Some programs write workbooks without styles; then no cell is a date. */
  private static ReadableWorkbook withoutStyles(Path file) throws NotWorkbook {
    try {
      return new ReadableWorkbook(file.toFile(), new ReadingOptions(false, true));
    } catch (IOException | RuntimeException e) {
      // The file could be read a moment ago, so it is its content, and the library throws many
      // kinds of these.
      throw broken(e);
    }
  }

  private static void checkSize(Path file) throws IOException, NotWorkbook {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      long size = zip.stream().mapToLong(e -> Math.max(0, e.getSize())).sum();
      if (size > LARGEST) {
        throw new NotWorkbook(
            "the workbook unpacks to " + (size >> 20) + " MB; expected a week's rows");
      }
    } catch (ZipException e) {
      throw broken(e);
    }
  }

  private static NotWorkbook broken(Exception e) {
    return new NotWorkbook(
        "not an XLSX workbook (" + e.getMessage() + "); expected one, saved anew, or a CSV file");
  }

  @Override
  public Optional<RawLine> next() throws IOException {
    try {
      while (!broken && rows.hasNext()) {
        Row row = rows.next();
        line = row.getRowNum();
        RawLine.Cells found = new RawLine.Cells(line, texts(row));
        if (!found.blank()) {
          return Optional.of(found);
        }
      }
      return Optional.empty();
    } catch (RuntimeException e) {
      // The library throws many kinds of these on torn XML; whatever it was, the rows up to here
      // stand.
      broken = true;
      return Optional.of(
          new RawLine.Fault(
              line + 1,
              "the sheet cannot be read from here on (" + e.getMessage() + "); expected it whole"));
    }
  }

  private List<String> texts(Row row) {
    List<String> texts = new ArrayList<>(row.getCellCount());
    for (Cell cell : row) {
      texts.add(cell == null ? "" : Blank.strip(cells.text(cell)));
    }
    return texts;
  }

  @Override
  public boolean decimalComma() {
    return false;
  }

  @Override
  public boolean shortRows() {
    return true;
  }

  @Override
  public void close() throws IOException {
    stream.close();
    workbook.close();
  }

  /** A file that is not a workbook, with the message for its finding. */
  public static final class NotWorkbook extends Exception {
    private static final long serialVersionUID = 1L;

    NotWorkbook(String message) {
      super(message);
    }
  }
}
