package pressweek.data.guide;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.guide.Form.Literal;
import pressweek.data.guide.Form.Slot;

/** Finds every way to read a part at a place of a code, and tells where the others broke off. */
final class PartReader {
  private final CodeText code;
  private final FieldScan scan;
  private final Misses misses;
  private final List<Hit> stack = new ArrayList<>();

  PartReader(CodeText code, Misses misses) {
    this.code = code;
    this.scan = new FieldScan(code);
    this.misses = misses;
  }

  /**
   * A part that is sought.
   *
   * @param part the part
   * @param from its first character
   * @param to where it ends, or where the code ends when {@code whole} is false
   * @param whole true when it must fill the text from {@code from} to {@code to}
   */
  record Sought(Part part, int from, int to, boolean whole) {}

  /** Every way to read a part. */
  List<PartMatch> read(Sought sought) {
    List<PartMatch> matches = new ArrayList<>(1);
    for (Form form : sought.part().forms()) {
      stack.clear();
      read(form, 0, sought.from(), sought, matches);
    }
    return matches;
  }

  private void read(Form form, int piece, int at, Sought sought, List<PartMatch> matches) {
    if (piece == form.pieces().size()) {
      if (sought.whole() && at < sought.to()) {
        missLeftOver(form, at, sought);
      } else {
        matches.add(new PartMatch(sought.part(), form, sought.from(), at, stack));
      }
    } else if (form.pieces().get(piece) instanceof Literal literal) {
      String text = literal.folded();
      if (at + text.length() <= sought.to() && code.folded().startsWith(text, at)) {
        read(form, piece + 1, at + text.length(), sought, matches);
      } else if (misses.listening()) {
        missLiteral(form, piece, at, sought.to());
      }
    } else {
      Field field = ((Slot) form.pieces().get(piece)).field();
      List<Hit> hits = scan.hits(field, at, sought.to());
      for (Hit hit : hits) {
        stack.add(hit);
        read(form, piece + 1, hit.end(), sought, matches);
        stack.remove(stack.size() - 1);
      }
      if (hits.isEmpty() && misses.listening()) {
        missField(form, piece, at, sought.to());
      }
    }
  }

  /**
   * A form that ends before its part does: the field before the rest was not what it seemed, or the
   * rest is too much.
   */
  private void missLeftOver(Form form, int at, Sought sought) {
    if (!misses.listening()) {
      return;
    }
    boolean endsInField =
        !form.pieces().isEmpty()
            && form.pieces().get(form.pieces().size() - 1) instanceof Slot slot
            && slot.field().frame().width() == 0
            && !stack.isEmpty();
    if (endsInField) {
      Hit last = stack.get(stack.size() - 1);
      String seen = code.written().substring(last.start(), sought.to());
      misses.add(new Miss(at, last.start(), seen, Miss.expected(last.field())));
    } else {
      String seen = code.written().substring(at, sought.to());
      misses.add(new Miss(at, at, seen, new Miss.Words("the end of the part")));
    }
  }

  private void missLiteral(Form form, int piece, int at, int to) {
    String text = ((Literal) form.pieces().get(piece)).folded();
    int same = 0;
    while (same < text.length()
        && at + same < to
        && text.charAt(same) == code.folded().charAt(at + same)) {
      same++;
    }
    String rest = ((Literal) form.pieces().get(piece)).text().substring(same);
    boolean field =
        piece + 1 < form.pieces().size() && form.pieces().get(piece + 1) instanceof Slot;
    String following =
        field ? "{" + ((Slot) form.pieces().get(piece + 1)).field().name() + "}" : "";
    Miss.Words expected = new Miss.Words("\"" + rest + following + "\"");
    misses.add(new Miss(at + same, at + same, code.written().substring(at + same, to), expected));
  }

  /**
   * A field that could not be read: what stands there goes on for the field's width, or up to the
   * literal that follows in the form, else to the end.
   */
  private void missField(Form form, int piece, int at, int to) {
    Field field = ((Slot) form.pieces().get(piece)).field();
    int end = to;
    int width = field.frame().width();
    if (width > 0) {
      end = Math.min(to, at + width);
    } else if (piece + 1 < form.pieces().size()
        && form.pieces().get(piece + 1) instanceof Literal literal) {
      int mark = code.folded().indexOf(literal.folded(), at);
      end = mark >= at && mark < end ? mark : end;
    }
    int reached = at;
    if (field instanceof Field.Number && width == 0) {
      String digits = scan.digits(at, to, true);
      reached += digits.length();
      end = digits.isEmpty() ? end : reached;
    }
    misses.add(new Miss(reached, at, code.written().substring(at, end), Miss.expected(field)));
  }
}
