package pressweek.reports.compare;

import java.util.List;
import java.util.Locale;
import pressweek.reports.markup.Element;
import pressweek.reports.markup.Pixels;

/**
 * Pictures of bars in rows and columns. Who a bar belongs to is told by its place, and the folder
 * as it stands by an outline instead of a filled bar, so that black and white suffice.
 */
final class BarTable {
  static final double ROW = 22;
  static final double HEAD = 24;

  private BarTable() {}

  static Element svg(double width, double height, String label) {
    return Element.of("svg", "bartable")
        .attr("width", width)
        .attr("height", height)
        .attr("viewBox", "0 0 " + Pixels.text(width) + " " + Pixels.text(height))
        .attr("role", "img")
        .attr("aria-label", label);
  }

  static Element text(String cssClass, double x, double y, String text) {
    return Element.of("text", cssClass).attr("x", x).attr("y", y).text(text);
  }

  static Element rule(double y, double width) {
    return Element.of("path", "rule")
        .attr("d", String.format(Locale.ROOT, "M0 %.1fH%.1f", y, width));
  }

  /** A bar; the folder as it stands has an outline. */
  static Element bar(boolean base, double x, double y, double width, double height) {
    return Element.of("rect", base ? "bar base" : "bar")
        .attr("x", x)
        .attr("y", y)
        .attr("width", Math.max(0.5, width))
        .attr("height", height);
  }

  static Element title(String text) {
    return Element.of("title").text(text);
  }

  /** A text that is cut where it does not fit; about six pixels a letter. */
  static String fitted(String text, double width) {
    int most = (int) (width / 6.2);
    return text.length() <= most ? text : text.substring(0, Math.max(1, most - 1)) + "\u2026";
  }

  /** Who is who, from top to bottom of a cell. */
  static Element legend(List<Tried> tried) {
    Element list = Element.of("ol", "whoiswho");
    for (int i = 0; i < tried.size(); i++) {
      Element svg =
          Element.of("svg")
              .attr("width", "30")
              .attr("height", "12")
              .attr("viewBox", "0 0 30 12")
              .attr("aria-hidden", "true")
              .add(bar(i == 0, 1, 2, 27, 7));
      list.add(Element.of("li").add(svg).text(" " + tried.get(i).name()));
    }
    return list;
  }
}
