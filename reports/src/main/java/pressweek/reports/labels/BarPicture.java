package pressweek.reports.labels;

import com.google.zxing.common.BitMatrix;
import java.util.Locale;
import java.util.Optional;
import pressweek.reports.markup.Element;

/**
 * A bar code as a picture in millimetres of paper: dark bars on white with the light edge that
 * scanners need. A module is at least {@value #LEAST_MODULE_MM} mm wide, which office printers and
 * hand scanners manage (common practice, no source).
 */
public final class BarPicture {
  static final double LEAST_MODULE_MM = 0.33;
  private static final double MOST_MODULE_MM = 0.5;

  private BarPicture() {}

  /**
   * A Code 128 picture; empty when the text cannot be held by it or would be wider than allowed.
   *
   * @param text what a scanner reads
   * @param widthMm the widest that the picture may be
   * @param heightMm how high it is
   */
  public static Optional<Element> code128(String text, double widthMm, double heightMm) {
    return BarCode.code128(text)
        .filter(code -> fits(code.getWidth() + 2 * BarCode.QUIET_CODE_128, widthMm))
        .map(code -> bars(code, widthMm, heightMm));
  }

  private static Element bars(BitMatrix code, double widthMm, double heightMm) {
    int modules = code.getWidth() + 2 * BarCode.QUIET_CODE_128;
    double module = Math.min(MOST_MODULE_MM, widthMm / modules);
    double high = heightMm / module;
    StringBuilder dark = new StringBuilder();
    row(dark, code, 0, BarCode.QUIET_CODE_128, new double[] {0, high});
    return svg(modules, high, module).add(path(dark));
  }

  /**
   * A QR picture; empty when the text needs more modules than fit.
   *
   * @param sideMm the widest that the picture may be
   */
  public static Optional<Element> qr(String text, double sideMm) {
    int most = (int) Math.floor(sideMm / LEAST_MODULE_MM) - 2 * BarCode.QUIET_QR;
    return BarCode.qr(text, most).map(code -> squares(code, sideMm));
  }

  private static Element squares(BitMatrix code, double sideMm) {
    int modules = code.getWidth() + 2 * BarCode.QUIET_QR;
    StringBuilder dark = new StringBuilder();
    for (int y = 0; y < code.getHeight(); y++) {
      row(dark, code, y, BarCode.QUIET_QR, new double[] {y + BarCode.QUIET_QR, 1});
    }
    double module = Math.min(MOST_MODULE_MM, sideMm / modules);
    return svg(modules, modules, module).add(path(dark));
  }

  private static boolean fits(int modules, double widthMm) {
    return modules * LEAST_MODULE_MM <= widthMm;
  }

  private static Element svg(double wide, double high, double moduleMm) {
    return Element.of("svg", "bars")
        .attr("width", number(wide * moduleMm) + "mm")
        .attr("height", number(high * moduleMm) + "mm")
        .attr("viewBox", "0 0 " + number(wide) + " " + number(high))
        .attr("shape-rendering", "crispEdges")
        .attr("aria-hidden", "true")
        .add(Element.of("rect", "ground").attr("width", number(wide)).attr("height", number(high)));
  }

  private static Element path(StringBuilder dark) {
    return Element.of("path").attr("d", dark.toString());
  }

  /**
   * The dark modules of a row as oblongs of a path, those that touch as one; {@code place} is top
   * and height.
   */
  private static void row(StringBuilder path, BitMatrix code, int y, int quiet, double[] place) {
    int from = 0;
    while (from < code.getWidth()) {
      int to = from;
      while (to < code.getWidth() && code.get(to, y)) {
        to++;
      }
      if (to > from) {
        path.append('M').append(from + quiet).append(' ').append(number(place[0]));
        path.append('h').append(to - from).append('v').append(number(place[1]));
        path.append('h').append(from - to).append('z');
      }
      from = to + 1;
    }
  }

  /** With three decimals at most, and none for a whole number. */
  private static String number(double value) {
    return String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
  }
}
