package pressweek.examples.published;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The best value of a published case that is known.
 *
 * @param name name or number of the case
 * @param value the value
 * @param verified false when the value is recalled and no schedule of that value is at hand
 */
record PublishedValue(String name, double value, boolean verified) {
  private static final String VERIFIED = "match";

  /**
   * Reads a table of values. Without a column {@code match} all count as verified.
   *
   * @param file the table, with a heading
   * @param name column of the cases' names
   * @param value column of the values
   */
  static List<PublishedValue> read(Path file, String name, String value) throws IOException {
    List<String> lines = Files.readAllLines(file);
    List<String> heading = lines.isEmpty() ? List.of() : List.of(lines.get(0).split(",", -1));
    if (!heading.contains(name) || !heading.contains(value)) {
      throw new IOException(file + ": expected columns " + name + " and " + value);
    }
    List<PublishedValue> values = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      if (cells.length != heading.size()) {
        throw new IOException(file + ": \"" + line + "\" has not the cells of the heading");
      }
      values.add(
          new PublishedValue(
              cells[heading.indexOf(name)],
              Double.parseDouble(cells[heading.indexOf(value)]),
              !heading.contains(VERIFIED) || cells[heading.indexOf(VERIFIED)].equals("yes")));
    }
    return values;
  }

  /** By how many percent a found value is above this one. */
  double gapPercent(double found) {
    return value == 0 && found == 0 ? 0 : 100 * (found / value - 1);
  }

  /** The number of a case whose name is one. */
  int number() {
    return Integer.parseInt(name);
  }
}
