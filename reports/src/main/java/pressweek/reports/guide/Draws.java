package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.guide.CodeDraw;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Family;
import pressweek.data.guide.Guide;
import pressweek.data.guide.Picked;
import pressweek.data.guide.Wish;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Origin;
import pressweek.reports.guide.Question.Row;

/** What questions are drawn from. */
final class Draws {
  /** One in so many specials is kept. */
  private static final int SPECIALS = 8;

  private static final int TRIES = 50;

  private final Guide guide;
  private final CodeDraw draw;
  private final Phrasebook words;

  Draws(Guide guide, CodeDraw draw) {
    this.guide = guide;
    this.draw = draw;
    this.words = new Phrasebook(guide);
  }

  Guide guide() {
    return guide;
  }

  Phrasebook words() {
    return words;
  }

  CodeDraw draw() {
    return draw;
  }

  /** One of a list. */
  <T> T one(List<T> of) {
    return of.get(draw.below(of.size()));
  }

  Family family() {
    return one(guide.families());
  }

  /** The code of an item of any family, in the guide's own spelling; seldom that of a special. */
  Optional<Drawn> good() {
    for (int i = 0; i < TRIES; i++) {
      Optional<Drawn> drawn = draw.good(family(), Wish.ANY).filter(this::suits);
      if (drawn.isPresent()) {
        return drawn;
      }
    }
    return Optional.empty();
  }

  private boolean suits(Drawn drawn) {
    String code = drawn.code();
    return guide.readings(code).size() == 1
        && guide.encoder().canonical(code).equals(code)
        && (!guide.decode(code).special() || draw.below(SPECIALS) == 0);
  }

  /** What each part of a code says, then what follows by rule and what is standard. */
  List<Row> explain(Drawn drawn) {
    List<Row> rows = new ArrayList<>();
    for (Picked part : drawn.parts()) {
      String name = drawn.family().parts().get(part.part()).name();
      rows.add(new Row(part.text(), name, words.part(part)));
    }
    for (Attribute attribute : guide.decode(drawn.code()).attributes()) {
      if (attribute.origin() == Origin.RULE || attribute.origin() == Origin.DEFAULT) {
        String kind = attribute.origin() == Origin.RULE ? "rule" : "standard";
        String value = words.value(attribute.name(), attribute.value());
        rows.add(new Row("", kind, value + " (" + attribute.because() + ")"));
      }
    }
    return rows;
  }
}
