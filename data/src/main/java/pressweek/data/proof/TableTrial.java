package pressweek.data.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.Choice;
import pressweek.data.guide.CodeSpace;
import pressweek.data.guide.Family;
import pressweek.data.guide.Form;
import pressweek.data.guide.Form.Literal;
import pressweek.data.guide.Form.Slot;
import pressweek.data.guide.Part;

/** Looks for symbols that stand in two tables either of which may come at the same place. */
final class TableTrial {
  private final Bench bench;
  private final Set<List<String>> told = new LinkedHashSet<>();

  TableTrial(Bench bench) {
    this.bench = bench;
  }

  /** A piece at which two forms part, with the part that it is of. */
  private record Branch(Part part, Form form, Form.Piece piece) {
    String name() {
      return piece instanceof Slot slot
          ? "\"" + slot.field().name() + '"'
          : "\"" + ((Literal) piece).text() + "\" of part \"" + part.name() + '"';
    }

    String key() {
      return piece instanceof Slot slot ? "field " + slot.field().name() : "form " + form.line();
    }
  }

  void run() {
    for (Family family : bench.guide().families()) {
      List<Part> parts = family.parts();
      for (int i = 0; i < parts.size(); i++) {
        within(family, parts.get(i));
        for (int j = i + 1; j < parts.size() && mayTakeTheSamePlace(parts, i, j); j++) {
          between(family, parts.get(i), parts.get(j));
        }
      }
    }
  }

  /** True when a later part can stand where an earlier one might. */
  private static boolean mayTakeTheSamePlace(List<Part> parts, int one, int other) {
    boolean anyOrder = parts.subList(one, other + 1).stream().allMatch(Part::anyOrder);
    return anyOrder || parts.subList(one, other).stream().allMatch(Part::optional);
  }

  private void within(Family family, Part part) {
    for (int i = 0; i < part.forms().size(); i++) {
      for (int j = i + 1; j < part.forms().size(); j++) {
        compare(family, part, part.forms().get(i), part, part.forms().get(j));
      }
    }
  }

  private void between(Family family, Part one, Part other) {
    for (Form form : one.forms()) {
      for (Form second : other.forms()) {
        compare(family, one, form, other, second);
      }
    }
  }

  private void compare(Family family, Part onePart, Form one, Part otherPart, Form other) {
    int at = 0;
    int length = one.pieces().size();
    if (length != other.pieces().size()) {
      return;
    }
    while (at < length && same(one.pieces().get(at), other.pieces().get(at))) {
      at++;
    }
    for (int rest = at + 1; rest < length; rest++) {
      if (!same(one.pieces().get(rest), other.pieces().get(rest))) {
        return;
      }
    }
    if (at < length) {
      overlap(
          bench.space(family),
          new Branch(onePart, one, one.pieces().get(at)),
          new Branch(otherPart, other, other.pieces().get(at)));
    }
  }

  private static boolean same(Form.Piece one, Form.Piece other) {
    if (one instanceof Slot a && other instanceof Slot b) {
      return a.field() == b.field();
    }
    return one instanceof Literal a && other instanceof Literal b && a.folded().equals(b.folded());
  }

  private void overlap(CodeSpace space, Branch one, Branch other) {
    Map<String, Choice> first = texts(space, one);
    Map<String, Choice> second = texts(space, other);
    List<String> shared = new ArrayList<>();
    int line = 0;
    int otherLine = 0;
    for (Map.Entry<String, Choice> choice : first.entrySet()) {
      Choice twin = second.get(choice.getKey());
      if (twin != null && !twin.sets().equals(choice.getValue().sets())) {
        line = shared.isEmpty() ? twin.line() : line;
        otherLine = shared.isEmpty() ? choice.getValue().line() : otherLine;
        shared.add(choice.getValue().text());
      }
    }
    if (!shared.isEmpty() && told.add(List.of(one.key(), other.key()))) {
      String stands = shared.size() == 1 ? "\" stands" : "\" stand";
      bench.warning(
          line,
          "\"%s%s in %s, too (line %d), which may come at the same place as %s"
              .formatted(
                  String.join("\", \"", shared.subList(0, Math.min(8, shared.size()))),
                  stands,
                  one.name(),
                  otherLine,
                  other.name()));
    }
  }

  private Map<String, Choice> texts(CodeSpace space, Branch branch) {
    Map<String, Choice> texts = new LinkedHashMap<>();
    if (branch.piece() instanceof Literal literal) {
      Choice choice =
          new Choice(literal.text(), literal.text(), branch.form().sets(), branch.form().line());
      texts.put(literal.folded(), choice);
    } else if (branch.piece() instanceof Slot slot) {
      for (Choice choice : space.choices(slot.field())) {
        boolean fold = bench.guide().ignoreCase();
        String text = fold ? choice.text().toUpperCase(Locale.ROOT) : choice.text();
        if (!choice.symbol().isEmpty()) {
          texts.putIfAbsent(text, choice);
        }
      }
    }
    return texts;
  }
}
