package pressweek.app.sweep;

import java.util.ArrayList;
import java.util.List;
import pressweek.reports.schedule.TextLines;

/**
 * A small table of text: names on the left, figures on the right, each column as wide as what it
 * holds. Names give way where the lines would become too long.
 */
final class SweepTable {
  private static final int GAP = 2;
  private static final int LEAST_NAME = 12;

  private final int width;
  private final List<List<String>> rows = new ArrayList<>();

  /** A table for lines of so many columns. */
  SweepTable(int width) {
    this.width = width;
  }

  /** Adds a row; all have as many cells. */
  void row(String... cells) {
    rows.add(List.of(cells));
  }

  /** Writes the table. */
  void write(TextLines out) {
    List<Integer> widths = new ArrayList<>();
    for (int c = 0; c < rows.get(0).size(); c++) {
      int place = c;
      widths.add(rows.stream().mapToInt(r -> length(r.get(place))).max().orElse(0));
    }
    int figures = widths.stream().skip(1).mapToInt(w -> w + GAP).sum();
    int name = Math.max(LEAST_NAME, Math.min(widths.get(0), width - figures));
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(fitted(row.get(0), name));
      line.append(" ".repeat(name - length(line.toString())));
      for (int c = 1; c < row.size(); c++) {
        line.append(" ".repeat(GAP + widths.get(c) - length(row.get(c)))).append(row.get(c));
      }
      out.verbatim(line.toString().stripTrailing());
    }
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  /** The end of a long name tells more than its beginning: there stands the scenario. */
  private static String fitted(String name, int most) {
    int over = length(name) - most;
    return over <= 0 ? name : "\u2026" + name.substring(name.offsetByCodePoints(0, over + 1));
  }
}
