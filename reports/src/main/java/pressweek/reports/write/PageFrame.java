package pressweek.reports.write;

import pressweek.reports.markup.Element;

/** What every page of a plan has round its content: a title, a policy, a style and a script. */
final class PageFrame {
  private final Edition edition;
  private final String name;

  /**
   * A frame for a page.
   *
   * @param name what the page is; empty for the plan itself
   */
  PageFrame(Edition edition, String name) {
    this.edition = edition;
    this.name = name;
  }

  /** The page with this body. */
  String html(Element body) {
    Element page =
        Element.of("html").attr("lang", "en").add(head()).add(body.add(PageStyle.script()));
    return "<!DOCTYPE html>\n" + page + "\n";
  }

  private Element head() {
    return Element.of("head")
        .add(Element.of("meta").attr("charset", "UTF-8"))
        .add(
            Element.of("meta")
                .attr("http-equiv", "Content-Security-Policy")
                .attr("content", PageStyle.policy()))
        .add(
            Element.of("meta")
                .attr("name", "viewport")
                .attr("content", "width=device-width, initial-scale=1"))
        .add(Element.of("meta").attr("name", "color-scheme").attr("content", "light dark"))
        .add("title", title())
        .add(PageStyle.style());
  }

  private String title() {
    String plant = edition.plan().problem().plant().name();
    return (edition.sound() ? "" : "Breaks hard rules: ")
        + (name.isEmpty() ? "" : name + ", ")
        + (name.isEmpty() ? "Plan " : "plan ")
        + edition.plan().head().number()
        + (plant.isBlank() ? "" : ", " + plant);
  }
}
