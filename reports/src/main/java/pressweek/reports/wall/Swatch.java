package pressweek.reports.wall;

import java.util.Optional;
import pressweek.data.problem.Colour;
import pressweek.reports.markup.Element;

/**
 * How a part's colour is drawn.
 *
 * @param fill the colour itself, or the hatching for one that is not known
 * @param ink black or white, whichever stands out more from the fill; empty for the ink of the page
 */
public record Swatch(String fill, String ink) {
  private static final String BLACK = "#000000";
  private static final String WHITE = "#ffffff";

  /** The swatch of a colour of the plant's; one without an sRGB value is hatched. */
  public static Swatch of(Optional<Colour> colour) {
    return colour
        .map(Colour::srgb)
        .filter(s -> s.matches("[0-9A-Fa-f]{6}"))
        .map(s -> new Swatch("#" + s, inkOn(s)))
        .orElse(new Swatch("url(#" + Patterns.UNKNOWN + ")", ""));
  }

  /** A small square of the colour beside its name. */
  public Element square() {
    Element rect = Element.of("rect", "edge").attr("x", "1").attr("y", "1").attr("rx", "1.5");
    rect.attr("width", "10").attr("height", "10").attr("fill", fill);
    return Element.of("svg", "swatch")
        .attr("viewBox", "0 0 12 12")
        .attr("width", "12")
        .attr("height", "12")
        .attr("aria-hidden", "true")
        .add(rect);
  }

  private static String inkOn(String srgb) {
    double luminance = luminance(srgb);
    return contrast(luminance, 0) >= contrast(luminance, 1) ? BLACK : WHITE;
  }

  /** Contrast ratio of two relative luminances by WCAG 2.1. */
  static double contrast(double one, double other) {
    return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
  }

  /**
   * Relative luminance of {@code RRGGBB} by WCAG 2.1 (sRGB of IEC 61966-2-1, coefficients of ITU-R
   * BT.709).
   */
  static double luminance(String srgb) {
    return 0.2126 * linear(srgb, 0) + 0.7152 * linear(srgb, 2) + 0.0722 * linear(srgb, 4);
  }

  private static double linear(String srgb, int at) {
    double value = Integer.parseInt(srgb.substring(at, at + 2), 16) / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
