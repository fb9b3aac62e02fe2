package pressweek.data.guide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pressweek.data.guide.Form.Literal;
import pressweek.data.guide.Form.Piece;
import pressweek.data.guide.Form.Slot;
import pressweek.data.guide.PartMatch.Said;

/**
 * Finds every way to read a part at a place of a code, and remembers where the others broke off.
 */
final class PartReader {
  private final String code;
  private final boolean ignoreCase;
  private final Misses misses;

  PartReader(String code, boolean ignoreCase, Misses misses) {
    this.code = code;
    this.ignoreCase = ignoreCase;
    this.misses = misses;
  }

  /**
   * The text in which a part is sought: from its first character up to where it must or may end.
   */
  private record Span(int from, int to, boolean whole) {}

  /**
   * A form being read: the pieces before {@code piece} are read, and {@code lastSlot} is where the
   * last field among them began.
   */
  private record State(Form form, int piece, int at, int lastSlot, List<Said> said) {
    State next(int end, int slot, List<Said> more) {
      List<Said> all = new ArrayList<>(said);
      all.addAll(more);
      return new State(form, piece + 1, end, slot, all);
    }

    Piece current() {
      return form.pieces().get(piece);
    }
  }

  /**
   * Every way to read a part.
   *
   * @param from its first character
   * @param to where the part ends, or where the code ends when {@code whole} is false
   * @param whole true when the part must fill the text from {@code from} to {@code to}
   */
  List<PartMatch> read(Part part, int from, int to, boolean whole) {
    List<PartMatch> matches = new ArrayList<>();
    Span span = new Span(from, to, whole);
    for (Form form : part.forms()) {
      List<Said> meant = new ArrayList<>();
      form.sets().forEach((attribute, value) -> meant.add(new Said(attribute, value, "")));
      read(new State(form, 0, from, -1, meant), span, matches);
    }
    return matches;
  }

  private void read(State state, Span span, List<PartMatch> matches) {
    if (state.piece() == state.form().pieces().size()) {
      finish(state, span, matches);
    } else if (state.current() instanceof Literal literal) {
      readLiteral(state, literal.text(), span, matches);
    } else if (state.current() instanceof Slot slot) {
      if (slot.field() instanceof Field.Table table) {
        readSymbol(state, table, span, matches);
      } else if (slot.field() instanceof Field.Number number) {
        readNumber(state, number, span, matches);
      }
    }
  }

  private void finish(State state, Span span, List<PartMatch> matches) {
    if (span.whole() && state.at() < span.to()) {
      missLeftOver(state, span);
    } else {
      String text = code.substring(span.from(), state.at());
      matches.add(new PartMatch(state.at(), text, state.said()));
    }
  }

  /**
   * A form that ends before its part does: the field before the rest was not what it seemed, or the
   * rest is too much.
   */
  private void missLeftOver(State state, Span span) {
    int last = state.form().pieces().size() - 1;
    if (last >= 0 && state.form().pieces().get(last) instanceof Slot slot) {
      String seen = code.substring(state.lastSlot(), span.to());
      misses.add(new Miss(state.at(), state.lastSlot(), seen, expected(slot.field())));
    } else {
      String seen = code.substring(state.at(), span.to());
      misses.add(new Miss(state.at(), state.at(), seen, new Miss.Words("the end of the part")));
    }
  }

  private void readLiteral(State state, String text, Span span, List<PartMatch> matches) {
    int same = 0;
    while (same < text.length()
        && state.at() + same < span.to()
        && same(text.charAt(same), code.charAt(state.at() + same))) {
      same++;
    }
    if (same == text.length()) {
      read(state.next(state.at() + same, state.lastSlot(), List.of()), span, matches);
    } else {
      int at = state.at() + same;
      Miss.Words rest = new Miss.Words("\"" + text.substring(same) + following(state) + "\"");
      misses.add(new Miss(at, at, code.substring(at, span.to()), rest));
    }
  }

  /** The field that follows the current piece, as the form writes it. */
  private static String following(State state) {
    int next = state.piece() + 1;
    boolean slot =
        next < state.form().pieces().size() && state.form().pieces().get(next) instanceof Slot;
    return slot ? "{" + ((Slot) state.form().pieces().get(next)).field().name() + "}" : "";
  }

  private boolean same(char a, char b) {
    return a == b || ignoreCase && Character.toUpperCase(a) == Character.toUpperCase(b);
  }

  private void readSymbol(State state, Field.Table table, Span span, List<PartMatch> matches) {
    List<String> found =
        table.entries().keySet().stream()
            .filter(symbol -> stands(symbol, state.at(), span.to()))
            .sorted(Comparator.comparingInt(String::length).reversed())
            .toList();
    for (String symbol : found) {
      Field.Entry entry =
          table.entries().getOrDefault(symbol, new Field.Entry(Map.of(), List.of()));
      String words = entry.words().isEmpty() ? "" : entry.words().get(0);
      List<Said> said = new ArrayList<>();
      entry.sets().forEach((attribute, value) -> said.add(new Said(attribute, value, words)));
      read(state.next(state.at() + symbol.length(), state.at(), said), span, matches);
    }
    if (found.isEmpty()) {
      miss(state, table, span);
    }
  }

  private boolean stands(String symbol, int at, int to) {
    return at + symbol.length() <= to
        && code.regionMatches(ignoreCase, at, symbol, 0, symbol.length());
  }

  private void readNumber(State state, Field.Number field, Span span, List<PartMatch> matches) {
    int end = digits(state.at(), span.to());
    if (end > state.at() && end + 1 < span.to() && code.charAt(end) == '.') {
      int fraction = digits(end + 1, span.to());
      end = fraction > end + 1 ? fraction : end;
    }
    if (end == state.at()) {
      miss(state, field, span);
      return;
    }
    BigDecimal written = new BigDecimal(code.substring(state.at(), end));
    if (field.range().holds(written)) {
      Said said = new Said(field.attribute(), field.value(written), "");
      read(state.next(end, state.at(), List.of(said)), span, matches);
    } else {
      String seen = code.substring(state.at(), end);
      misses.add(new Miss(end, state.at(), seen, expected(field)));
    }
  }

  private int digits(int from, int to) {
    int end = from;
    while (end < to && code.charAt(end) >= '0' && code.charAt(end) <= '9') {
      end++;
    }
    return end;
  }

  /**
   * A field that could not be read: what stands there goes up to the literal that follows in the
   * form, else to the end.
   */
  private void miss(State state, Field field, Span span) {
    int end = span.to();
    int after = state.piece() + 1;
    if (after < state.form().pieces().size()
        && state.form().pieces().get(after) instanceof Literal literal) {
      int mark = code.indexOf(literal.text(), state.at());
      end = mark >= state.at() && mark < end ? mark : end;
    }
    String seen = code.substring(state.at(), end);
    misses.add(new Miss(state.at(), state.at(), seen, expected(field)));
  }

  private static Miss.Expected expected(Field field) {
    if (field instanceof Field.Table table) {
      return new Miss.Symbol(table.name(), List.copyOf(table.entries().keySet()));
    }
    Field.Number number = (Field.Number) field;
    return new Miss.Words(number.name() + " " + number.words());
  }
}
