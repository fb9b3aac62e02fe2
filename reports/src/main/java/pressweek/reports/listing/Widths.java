package pressweek.reports.listing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How wide the columns of a list should be, in characters: as wide as what they hold, within
 * bounds, and at least as wide as the longest word above them.
 */
public final class Widths {
  private static final int TIME = 16;
  private static final int LEAST = 3;

  private Widths() {}

  /**
   * A width a column.
   *
   * @param most the widest that a column may be for what it holds; longer text is wrapped
   * @param headings what stands above each column
   */
  public static List<Integer> of(Listing list, int most, List<String> headings) {
    List<Integer> widths = new ArrayList<>();
    for (int i = 0; i < list.columns().size(); i++) {
      int place = i;
      int held = list.rows().stream().mapToInt(r -> width(r.get(place))).max().orElse(LEAST);
      widths.add(Math.max(Math.min(most, Math.max(LEAST, held)), longestWord(headings.get(i))));
    }
    return widths;
  }

  private static int width(Cell cell) {
    if (cell instanceof Cell.Text text) {
      return longestLine(text.text());
    }
    if (cell instanceof Cell.Texts texts) {
      return texts.texts().stream().mapToInt(Widths::longestLine).max().orElse(0);
    }
    if (cell instanceof Cell.Number number) {
      return number.value().toPlainString().length();
    }
    return TIME;
  }

  private static int longestLine(String text) {
    return text.lines().mapToInt(l -> l.codePointCount(0, l.length())).max().orElse(0);
  }

  private static int longestWord(String heading) {
    return Arrays.stream(heading.split(" ")).mapToInt(String::length).max().orElse(0);
  }
}
