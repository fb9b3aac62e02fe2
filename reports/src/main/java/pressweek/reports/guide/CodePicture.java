package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pressweek.data.guide.Choice;
import pressweek.data.guide.CodeDraw;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Family;
import pressweek.data.guide.Field;
import pressweek.data.guide.Form.Literal;
import pressweek.data.guide.Form.Piece;
import pressweek.data.guide.Guide;
import pressweek.data.guide.Part;
import pressweek.data.guide.Picked;
import pressweek.data.guide.Wish;
import pressweek.reports.markup.Element;

/** An example of a code with its parts marked, and what each of them says beneath it. */
final class CodePicture {
  private static final int DRAWN = 60;
  private static final long SEED = 1;

  private final Guide guide;
  private final Phrasebook words;

  CodePicture(Guide guide, Phrasebook words) {
    this.guide = guide;
    this.words = words;
  }

  /** A code of a family that shows as many of its parts as can be; the same one each time. */
  static Optional<Drawn> example(Guide guide, Family family) {
    CodeDraw draw = new CodeDraw(guide, SEED);
    List<Drawn> drawn = new ArrayList<>();
    for (int i = 0; i < DRAWN; i++) {
      draw.good(family, Wish.ANY).ifPresent(drawn::add);
    }
    return drawn.stream()
        .min(
            Comparator.comparingInt(CodePicture::parts)
                .thenComparingInt(CodePicture::fills)
                .thenComparingInt(code -> code.code().length()));
  }

  /** Distinct parts, negative so that more of them come first. */
  private static int parts(Drawn drawn) {
    return -(int) drawn.parts().stream().mapToInt(Picked::part).distinct().count();
  }

  private static int fills(Drawn drawn) {
    return (int)
        drawn.parts().stream()
            .flatMap(part -> part.choices().stream())
            .filter(choice -> choice.symbol().isEmpty())
            .count();
  }

  /** The code in boxes. */
  Element of(Drawn drawn) {
    Element picture = Element.of("div", "anatomy");
    for (int i = 0; i < drawn.parts().size(); i++) {
      Element group = Element.of("div", "group");
      if (i > 0 && !guide.sheet().separator().isEmpty()) {
        group.add(Element.of("div", "joint").add(Paper.code(guide.sheet().separator())));
      }
      picture.add(group.add(part(drawn.family(), drawn.parts().get(i))));
    }
    return picture;
  }

  private Element part(Family family, Picked picked) {
    Part part = family.parts().get(picked.part());
    Element pieces = Element.of("div", "pieces");
    int field = 0;
    for (Piece piece : picked.form().pieces()) {
      if (piece instanceof Literal literal) {
        boolean alone = picked.form().pieces().size() == 1;
        String says = alone && !picked.form().sets().isEmpty() ? words.part(picked) : "";
        pieces.add(
            box(
                alone ? "piece" : "piece mark",
                "",
                literal.text(),
                says.equals(part.name()) ? "" : says));
      } else {
        Field read = picked.form().fields().get(field);
        Choice choice = picked.choices().get(field++);
        String name = Phrasebook.plain(read.name());
        pieces.add(
            box(
                "piece",
                name.equals(part.name()) ? "" : name,
                choice.text(),
                withoutName(name, words.underItsField(read, choice))));
      }
    }
    String form =
        picked.form().sets().isEmpty() || picked.form().fields().isEmpty()
            ? ""
            : " = " + words.meaning(picked.form().sets());
    boolean said = form.endsWith(" " + part.name());
    return Element.of("div", "part")
        .add(pieces)
        .add(Element.of("div", "partname").text(part.name() + (said ? "" : form)));
  }

  /** What a symbol says, without the name that stands above it. */
  private static String withoutName(String name, String says) {
    return says.startsWith(name + " ") ? says.substring(name.length() + 1) : says;
  }

  private static Element box(String cssClass, String name, String text, String says) {
    return Element.of("div", cssClass)
        .add(Paper.code(text))
        .add(Element.of("span", "fieldname").text(name))
        .add(Element.of("span", "says").text(says));
  }

  /** How codes of a family are built, in one line: parts that may be left out in brackets. */
  String shape(Family family) {
    StringBuilder shape = new StringBuilder();
    for (Part part : family.parts()) {
      String name = part.name() + (part.repeat() > 1 ? " (up to " + part.repeat() + ")" : "");
      String joint = shape.isEmpty() ? "" : " " + guide.sheet().separator() + " ";
      shape.append(part.optional() ? joint + "[" + name + "]" : joint + name);
    }
    return shape.toString().replace("  ", " ");
  }
}
