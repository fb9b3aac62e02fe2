package pressweek.reports.write;

import java.util.Optional;
import pressweek.data.problem.Colour;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.wall.Swatch;

/**
 * Resin and colour on a page: a square of the colour, the symbols and, below them, the colour's
 * name.
 */
final class Material {
  private Material() {}

  /** A cell with the material; empty when neither is known. */
  static Element of(PlanBook book, String resin, String colourId) {
    Element td = Element.of("td");
    if (resin.isEmpty() && colourId.isEmpty()) {
      return td;
    }
    Optional<Colour> colour = book.colour(resin, colourId);
    Element first = Element.of("div");
    if (!colourId.isEmpty()) {
      first.add(Swatch.of(colour).square());
    }
    td.add(first.text((resin + " " + colourId).trim()));
    String name = colour.map(Colour::name).orElse("");
    return name.isBlank() ? td : td.add(Element.of("div", "muted").text(name));
  }
}
