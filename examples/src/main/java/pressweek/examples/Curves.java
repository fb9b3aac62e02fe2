package pressweek.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import pressweek.reports.markup.Element;

/**
 * A picture of values over seconds: seconds by their logarithm, values evenly from 0 up. Lines
 * differ by their dashes and their marks, so that the picture says the same on a black and white
 * printer.
 */
public final class Curves {
  private static final double WIDTH = 640;
  private static final double HEIGHT = 380;
  private static final double LEFT = 70;
  private static final double RIGHT = 440;
  private static final double TOP = 30;
  private static final double BOTTOM = 330;
  private static final int STEPS = 5;
  private static final double LINE_HEIGHT = 22;
  private static final List<String> DASHES =
      List.of("none", "8 4", "2 3", "10 3 2 3", "5 5", "1 5");

  private final String title;
  private final String unit;
  private final Map<String, TreeMap<Double, Double>> lines = new java.util.LinkedHashMap<>();

  /**
   * An empty picture.
   *
   * @param title what it shows
   * @param unit unit of the values
   */
  public Curves(String title, String unit) {
    this.title = title;
    this.unit = unit;
  }

  /** Adds a point to the line of a name. */
  public void add(String line, double seconds, double value) {
    lines.computeIfAbsent(line, name -> new TreeMap<>()).put(seconds, value);
  }

  /** The picture as the text of an SVG file. */
  public String svg() {
    Element svg =
        Element.of("svg")
            .attr("xmlns", "http://www.w3.org/2000/svg")
            .attr("viewBox", "0 0 640 380")
            .attr("width", WIDTH)
            .attr("height", HEIGHT)
            .attr("font-family", "sans-serif")
            .attr("font-size", "12");
    svg.add(Element.of("title").text(title));
    svg.add(box(0, 0, WIDTH, HEIGHT).attr("fill", "#fff"));
    svg.add(text(LEFT, TOP - 12, title + ", " + unit));
    svg.addAll(frame());
    int index = 0;
    for (Map.Entry<String, TreeMap<Double, Double>> line : lines.entrySet()) {
      svg.addAll(line(line.getKey(), line.getValue(), index++));
    }
    return svg + "\n";
  }

  private List<Element> frame() {
    List<Element> all = new ArrayList<>();
    all.add(box(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP).attr("fill", "none").attr("stroke", "#000"));
    for (int i = 0; i <= STEPS; i++) {
      double value = lowest() + (highest() - lowest()) * i / STEPS;
      all.add(
          Element.of("line")
              .attr("x1", LEFT)
              .attr("x2", RIGHT)
              .attr("y1", y(value))
              .attr("y2", y(value))
              .attr("stroke", "#bbb"));
      all.add(text(LEFT - 6, y(value) + 4, label(value)).attr("text-anchor", "end"));
    }
    lines.values().stream()
        .flatMap(line -> line.keySet().stream())
        .distinct()
        .forEach(s -> all.add(text(x(s), BOTTOM + 18, plain(s)).attr("text-anchor", "middle")));
    all.add(text((LEFT + RIGHT) / 2, BOTTOM + 38, "seconds").attr("text-anchor", "middle"));
    return all;
  }

  private List<Element> line(String name, TreeMap<Double, Double> points, int index) {
    List<Element> all = new ArrayList<>();
    StringBuilder path = new StringBuilder();
    points.forEach((s, v) -> path.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(s), y(v))));
    all.add(stroke(path.toString().strip(), index));
    points.forEach((s, v) -> all.add(mark(x(s), y(v), index)));
    double row = TOP + 10 + index * LINE_HEIGHT;
    String sample =
        String.format(Locale.ROOT, "%.1f,%.1f %.1f,%.1f", RIGHT + 14, row, RIGHT + 50, row);
    all.add(stroke(sample, index));
    all.add(mark(RIGHT + 32, row, index));
    all.add(text(RIGHT + 58, row + 4, name));
    return all;
  }

  private static Element stroke(String points, int index) {
    return Element.of("polyline")
        .attr("points", points)
        .attr("fill", "none")
        .attr("stroke", "#000")
        .attr("stroke-width", "1.5")
        .attr("stroke-dasharray", DASHES.get(index % DASHES.size()));
  }

  /** Square, circle, triangle, then the same filled. */
  private static Element mark(double x, double y, int index) {
    Element mark =
        switch (index % 3) {
          case 0 -> box(x - 3.5, y - 3.5, 7, 7);
          case 1 -> Element.of("circle").attr("cx", x).attr("cy", y).attr("r", 4);
          default ->
              Element.of("polygon")
                  .attr(
                      "points",
                      String.format(
                          Locale.ROOT,
                          "%.1f,%.1f %.1f,%.1f %.1f,%.1f",
                          x - 4.5,
                          y + 4,
                          x + 4.5,
                          y + 4,
                          x,
                          y - 5));
        };
    return mark.attr("fill", index % 6 < 3 ? "#fff" : "#000").attr("stroke", "#000");
  }

  private static Element box(double x, double y, double width, double height) {
    return Element.of("rect").attr("x", x).attr("y", y).attr("width", width).attr("height", height);
  }

  private static Element text(double x, double y, String words) {
    return Element.of("text").attr("x", x).attr("y", y).text(words);
  }

  private double x(double seconds) {
    double from = Math.log(least());
    double to = Math.log(most());
    double share = to > from ? (Math.log(seconds) - from) / (to - from) : 0.5;
    return LEFT + 20 + share * (RIGHT - LEFT - 40);
  }

  private double y(double value) {
    double span = highest() - lowest();
    return BOTTOM - (span > 0 ? (value - lowest()) / span : 0.5) * (BOTTOM - TOP);
  }

  private double least() {
    return lines.values().stream().mapToDouble(TreeMap::firstKey).min().orElse(1);
  }

  private double most() {
    return lines.values().stream().mapToDouble(TreeMap::lastKey).max().orElse(1);
  }

  private double lowest() {
    return Math.min(0, values().min().orElse(0));
  }

  /** The first number of whole round steps above all values: 1, 2 or 5 times a power of ten. */
  private double highest() {
    double span = values().max().orElse(0) - lowest();
    if (span <= 0) {
      return lowest() + 1;
    }
    double power = Math.pow(10, Math.floor(Math.log10(span / STEPS)));
    double factor = span / STEPS / power;
    double step = factor <= 1 ? 1 : factor <= 2 ? 2 : factor <= 5 ? 5 : 10;
    return lowest() + STEPS * step * power;
  }

  private java.util.stream.DoubleStream values() {
    return lines.values().stream()
        .flatMap(line -> line.values().stream())
        .mapToDouble(Double::doubleValue);
  }

  private String label(double value) {
    return String.format(Locale.ROOT, highest() - lowest() < STEPS ? "%.2f" : "%,.0f", value);
  }

  private static String plain(double seconds) {
    return String.format(Locale.ROOT, "%.0f", seconds);
  }
}
