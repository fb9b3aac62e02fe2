package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Finds what a field may be read as at a place of a code. */
final class FieldScan {
  /** More digits than these are no number of a code. */
  private static final int MOST_DIGITS = 18;

  private final CodeText code;

  FieldScan(CodeText code) {
    this.code = code;
  }

  /**
   * Everything that a field may be read as.
   *
   * @param at its first character
   * @param to where it must have ended
   */
  List<Hit> hits(Field field, int at, int to) {
    Field.Frame frame = field.frame();
    if (frame.width() > 0 && at + frame.width() > to) {
      return List.of();
    }
    List<Hit> filled = fill(field, at, to);
    if (!filled.isEmpty()) {
      return filled;
    }
    if (field instanceof Field.Table table) {
      return symbols(table, at, to);
    }
    if (field instanceof Field.Number number) {
      return number(number, at, to);
    }
    return special((Field.Special) field, at, to);
  }

  /** A field in which nothing but its fill character stands. */
  private List<Hit> fill(Field field, int at, int to) {
    Fill fill = field.frame().fill();
    if (fill == Fill.NOTHING) {
      return List.of();
    }
    String none = Fill.whole(fill.none(), field.frame().width());
    String standard = Fill.whole(fill.standard(), field.frame().width());
    if (stands(none, at, to)) {
      Map<String, String> sets =
          field.attribute().isEmpty() ? Map.of() : Map.of(field.attribute(), "");
      return List.of(new Hit(field, at, at + none.length(), "", sets, "does not apply"));
    }
    if (stands(standard, at, to)) {
      return List.of(
          new Hit(field, at, at + standard.length(), "", Map.of(), "the standard value"));
    }
    return List.of();
  }

  private boolean stands(String text, int at, int to) {
    return !text.isEmpty() && at + text.length() <= to && code.folded().startsWith(text, at);
  }

  private List<Hit> symbols(Field.Table table, int at, int to) {
    int width = table.frame().width();
    List<String> found;
    if (width > 0) {
      String symbol = table.symbols().exactly(unfilled(table.frame(), at));
      found = symbol.isEmpty() ? List.of() : List.of(symbol);
    } else {
      found = table.symbols().at(code.folded(), at, to);
    }
    if (found.isEmpty()) {
      return List.of();
    }
    List<Hit> hits = new ArrayList<>(found.size());
    for (String symbol : found) {
      Field.Entry entry = table.entry(symbol);
      int end = at + (width > 0 ? width : symbol.length());
      hits.add(new Hit(table, at, end, symbol, entry.sets(), entry.display()));
    }
    return hits;
  }

  /** The text of a field of fixed width without what fills it up. */
  private String unfilled(Field.Frame frame, int at) {
    int from = at;
    int to = at + frame.width();
    String shorter = frame.fill().shorter();
    if (!shorter.isEmpty()) {
      char fill = shorter.charAt(0);
      if (frame.fill().left()) {
        while (from < to && code.folded().charAt(from) == fill) {
          from++;
        }
      } else {
        while (to > from && code.folded().charAt(to - 1) == fill) {
          to--;
        }
      }
    }
    return code.folded().substring(from, to);
  }

  private List<Hit> number(Field.Number field, int at, int to) {
    int width = field.frame().width();
    String text = width > 0 ? unfilled(field.frame(), at) : digits(at, to, field.decimals() == 0);
    if (width > 0 && text.isEmpty() && field.frame().fill().shorter().equals("0")) {
      text = "0";
    }
    if (text.isEmpty() || text.length() > MOST_DIGITS || !isNumber(text, field.decimals() == 0)) {
      return List.of();
    }
    BigDecimal written = new BigDecimal(text).movePointLeft(field.decimals());
    if (!field.range().holds(written)) {
      return List.of();
    }
    int end = at + (width > 0 ? width : text.length());
    return List.of(
        new Hit(field, at, end, text, Map.of(field.attribute(), field.value(written)), ""));
  }

  private static boolean isNumber(String text, boolean point) {
    int points = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '.' && point && i > 0 && i < text.length() - 1) {
        points++;
      } else if (c < '0' || c > '9') {
        return false;
      }
    }
    return points <= 1;
  }

  /** The digits at a place, with a fraction if that is possible; empty when there are none. */
  String digits(int at, int to, boolean point) {
    int end = endOfDigits(at, to);
    if (point && end > at && end + 1 < to && code.folded().charAt(end) == '.') {
      int fraction = endOfDigits(end + 1, to);
      end = fraction > end + 1 ? fraction : end;
    }
    return code.folded().substring(at, end);
  }

  private int endOfDigits(int from, int to) {
    int end = from;
    while (end < to && code.folded().charAt(end) >= '0' && code.folded().charAt(end) <= '9') {
      end++;
    }
    return end;
  }

  private List<Hit> special(Field.Special field, int at, int to) {
    int length = field.marks().from().length();
    int lacking = Math.max(0, field.frame().width() - length);
    int end = at + length + lacking;
    Fill fill = field.frame().fill();
    int markAt = fill.left() ? at + lacking : at;
    String filling = fill.shorter().repeat(lacking);
    boolean filled = end <= to && stands(filling, fill.left() ? at : at + length, to);
    String mark =
        end <= to && (lacking == 0 || filled)
            ? code.folded().substring(markAt, markAt + length)
            : "";
    if (!field.marks().holds(mark)) {
      return List.of();
    }
    Map<String, String> sets = Map.of(field.attribute(), mark);
    return List.of(new Hit(field, at, end, mark, sets, "special, by its own record"));
  }
}
