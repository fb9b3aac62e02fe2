package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.Family;
import pressweek.data.guide.Field;
import pressweek.data.guide.Fill;
import pressweek.data.guide.Form;
import pressweek.data.guide.Guide;
import pressweek.data.guide.Part;
import pressweek.reports.markup.Element;

/** The symbols of a guide, a box for each part of its codes. */
final class SymbolBoxes {
  private final Guide guide;
  private final Phrasebook words;
  private final Map<Field, Boolean> shown = new IdentityHashMap<>();

  SymbolBoxes(Guide guide, Phrasebook words) {
    this.guide = guide;
    this.words = words;
  }

  /** One box a part, in the order in which parts come in the families. */
  List<Element> boxes() {
    List<Element> boxes = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (Family family : guide.families()) {
      for (Part part : family.parts()) {
        if (seen.add(part.name())) {
          boxes.add(box(part));
        }
      }
    }
    return boxes;
  }

  private Element box(Part part) {
    List<String> may = new ArrayList<>();
    if (part.optional()) {
      may.add("may be left out");
    }
    if (part.anyOrder()) {
      may.add("any order");
    }
    if (part.repeat() > 1) {
      may.add("up to " + part.repeat() + " times");
    }
    Element heading = Element.of("h3").text(part.name());
    if (!may.isEmpty()) {
      heading.add(Element.of("small").text(" " + String.join(", ", may)));
    }
    Element box = Element.of("div", "box").add(heading);
    boolean plain = part.forms().size() == 1 && part.forms().get(0).pieces().size() == 1;
    if (!plain || part.forms().get(0).fields().isEmpty()) {
      part.forms().forEach(form -> box.add(form(form)));
    }
    boolean first = true;
    for (Form form : part.forms()) {
      for (Field field : form.fields()) {
        if (shown.put(field, true) == null) {
          boolean named = first && Phrasebook.plain(field.name()).equals(part.name());
          first = false;
          box.addAll(field(field, named ? "" : Phrasebook.plain(field.name())));
        }
      }
    }
    return box;
  }

  /** How a part is written, with what that alone says. */
  private Element form(Form form) {
    Element line = Element.of("p", "form");
    boolean afterField = false;
    for (Form.Piece piece : form.pieces()) {
      line.text(afterField && piece instanceof Form.Slot ? " " : "");
      afterField = piece instanceof Form.Slot;
      if (piece instanceof Form.Literal literal) {
        line.add(Paper.code(literal.text()));
      } else if (piece instanceof Form.Slot slot) {
        line.add(Element.of("i").text(Phrasebook.plain(slot.field().name())));
      }
    }
    return form.sets().isEmpty() ? line : line.text(" = " + words.meaning(form.sets()));
  }

  private List<Element> field(Field field, String name) {
    List<Element> content = new ArrayList<>();
    if (field instanceof Field.Table table) {
      if (!name.isEmpty()) {
        content.add(Element.of("h4").text(name));
      }
      content.add(new SymbolTable(table, words).element());
    } else if (field instanceof Field.Number number) {
      content.add(named(name, number.words()));
    } else if (field instanceof Field.Special special) {
      content.add(named(name, special.marks() + ": an item with a record of its own"));
    }
    fill(field.frame()).forEach(content::add);
    return content;
  }

  private static Element named(String name, String what) {
    Element line = Element.of("p", "range");
    if (!name.isEmpty()) {
      line.add("b", name).text(" ");
    }
    return line.text(what);
  }

  /** What fill characters mean in a field. */
  private List<Element> fill(Field.Frame frame) {
    Fill fill = frame.fill();
    Map<String, String> means = new LinkedHashMap<>();
    int width = Math.max(1, frame.width());
    if (!fill.none().isEmpty()) {
      means.put(fill.none().repeat(width), "none");
    }
    if (!fill.standard().isEmpty()) {
      means.put(fill.standard().repeat(width), "standard");
    }
    if (!fill.shorter().isEmpty() && frame.width() > 1) {
      means.put(fill.shorter(), "fills up to " + width + (fill.left() ? ", from the left" : ""));
    }
    if (means.isEmpty()) {
      return List.of();
    }
    Element line = Element.of("p", "fill");
    int left = means.size();
    for (Map.Entry<String, String> mean : means.entrySet()) {
      line.add(Paper.code(mean.getKey())).text(" " + mean.getValue() + (--left > 0 ? "; " : ""));
    }
    return List.of(line);
  }
}
