package pressweek.reports.guide;

import java.util.List;
import pressweek.reports.markup.Element;
import pressweek.reports.markup.PageResource;

/** A page for the printer: no script, nothing fetched, black on white. */
final class Paper {
  private static final PageResource STYLE = PageResource.beside(Paper.class, "paper.css");

  private Paper() {}

  /** A page of its own. */
  static String page(String title, List<Element> content) {
    String policy =
        "default-src 'none'; style-src " + STYLE.hash() + "; base-uri 'none'; form-action 'none'";
    Element head =
        Element.of("head")
            .add(Element.of("meta").attr("charset", "UTF-8"))
            .add(
                Element.of("meta")
                    .attr("http-equiv", "Content-Security-Policy")
                    .attr("content", policy))
            .add(
                Element.of("meta")
                    .attr("name", "viewport")
                    .attr("content", "width=device-width, initial-scale=1"))
            .add("title", title)
            .add(Element.verbatim("style", STYLE.text()));
    Element page =
        Element.of("html")
            .attr("lang", "en")
            .add(head)
            .add(Element.of("body").add(Element.of("main").addAll(content)));
    return "<!DOCTYPE html>\n" + page + "\n";
  }

  /** A text in the letters in which codes are written. */
  static Element code(String text) {
    return Element.of("code").text(text);
  }

  /** A section with its heading. */
  static Element section(String cssClass, String heading, List<Element> content) {
    return Element.of("section", cssClass).add("h2", heading).addAll(content);
  }
}
