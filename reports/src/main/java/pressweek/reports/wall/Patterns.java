package pressweek.reports.wall;

import pressweek.reports.markup.Element;

/**
 * The hatchings of the wall. Each differs from the others in its lines, so that it can be told in
 * black and white.
 */
final class Patterns {
  static final String UNKNOWN = "hatch-unknown";
  static final String CHANGE = "hatch-change";
  static final String DISMOUNT = "hatch-dismount";
  static final String AWAY = "hatch-away";

  private Patterns() {}

  /** The picture that holds the hatchings; it shows nothing itself. */
  static Element definitions() {
    Element defs =
        Element.of("defs")
            .add(pattern(CHANGE, 4, "M-1 5L5 -1M-1 1L1 -1M3 5L5 3"))
            .add(pattern(DISMOUNT, 4, "M2 0V4"))
            .add(pattern(AWAY, 7, "M0 0L7 7M7 0L0 7"))
            .add(pattern(UNKNOWN, 9, "M-1 -1L10 10M-1 8L1 10M8 -1L10 1"));
    return Element.of("svg", "patterns")
        .attr("width", "0")
        .attr("height", "0")
        .attr("aria-hidden", "true")
        .add(defs);
  }

  private static Element pattern(String id, int size, String lines) {
    String length = Integer.toString(size);
    Element ground = Element.of("rect", "ground").attr("width", length).attr("height", length);
    return Element.of("pattern")
        .attr("id", id)
        .attr("width", length)
        .attr("height", length)
        .attr("patternUnits", "userSpaceOnUse")
        .add(ground)
        .add(Element.of("path", "line").attr("d", lines));
  }
}
