package pressweek.reports.wall;

import pressweek.reports.markup.Element;

/** What the marks of the wall mean, each mark drawn beside its words. */
final class Legend {

  private Legend() {}

  static Element element() {
    Element list = Element.of("ul", "legend").attr("aria-label", "What the marks mean");
    add(list, bar("#c9d3d6"), "run, in the colour of its parts; thin where it pauses");
    add(list, bar("url(#" + Patterns.UNKNOWN + ")"), "run, colour not known");
    add(list, bar("#c9d3d6").add(mark("M6 5l3.5 4-3.5 4m4-8 3.5 4-3.5 4")), "running now");
    add(list, bar("#c9d3d6").add(mark("M9 9a2.6 2.6 0 1 1 .1 0zm0 0v5")), "promised to the floor");
    add(list, hatch(Patterns.CHANGE), "change, with its minutes");
    add(list, hatch(Patterns.DISMOUNT), "mold taken off for another press");
    add(
        list,
        Element.of("g", "wait")
            .add(Element.of("path").attr("d", "M2 5v8M24 5v8"))
            .add(Element.of("path", "dotted").attr("d", "M2 9H24")),
        "press waits");
    add(
        list,
        Element.of("g")
            .add(Element.of("path", "late").attr("d", "M3 15.5H24M24 11v6"))
            .add(Element.of("path", "flag").attr("d", "M3 16v-13l7 3-7 3")),
        "late: flag where due, line to where ready");
    add(list, hatch(Patterns.AWAY), "press away");
    add(list, box("closed"), "press not working; nights and days when none works are drawn narrow");
    return list;
  }

  private static void add(Element list, Element mark, String words) {
    Element svg =
        Element.of("svg", "key")
            .attr("width", "26")
            .attr("height", "18")
            .attr("viewBox", "0 0 26 18")
            .attr("aria-hidden", "true")
            .add(mark);
    list.add(Element.of("li").add(svg).text(words));
  }

  private static Element box(String cssClass) {
    return Element.of("rect", cssClass)
        .attr("x", "1")
        .attr("y", "1")
        .attr("width", "24")
        .attr("height", "16");
  }

  private static Element bar(String fill) {
    return Element.of("g").add(box("edge").attr("rx", "2").attr("fill", fill));
  }

  private static Element hatch(String pattern) {
    return box("hatched").attr("fill", "url(#" + pattern + ")");
  }

  private static Element mark(String path) {
    return Element.of("path", "mark").attr("d", path).attr("stroke", "#000000");
  }
}
