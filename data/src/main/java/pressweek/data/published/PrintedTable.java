package pressweek.data.published;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A table of published figures that comes with the program: lines with {@code #} and the name of
 * the source, a line of column names, then rows with commas between the cells and no quotes.
 *
 * <pre>
 * # Source: ISO 261
 * major_mm,coarse_mm,fine_mm
 * 8,1.25,1;0.75
 * </pre>
 */
public final class PrintedTable {
  private PrintedTable() {}

  /**
   * The cells of every row, stripped, in the order of the file.
   *
   * @param owner class beside which the table lies
   * @param file its file name
   * @throws IllegalArgumentException when there is no such table, or a row has not as many cells as
   *     there are column names
   */
  public static List<List<String>> rows(Class<?> owner, String file) {
    List<List<String>> lines = lines(owner, file).stream().map(PrintedTable::cells).toList();
    int columns = lines.isEmpty() ? 0 : lines.get(0).size();
    for (List<String> line : lines) {
      if (line.size() != columns) {
        throw new IllegalArgumentException(
            file + ": " + line + " has " + line.size() + " cells; expected " + columns);
      }
    }
    return lines.stream().skip(1).toList();
  }

  private static List<String> lines(Class<?> owner, String file) {
    InputStream in = owner.getResourceAsStream(file);
    if (in == null) {
      throw new IllegalArgumentException("no table " + file + " beside " + owner.getName());
    }
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      // A size such as #10 opens a row too; a remark has a space after its sign.
      return lines.lines().filter(l -> !l.isBlank() && !l.startsWith("# ")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> cells(String line) {
    return List.of(line.split(",", -1)).stream().map(String::strip).toList();
  }
}
