package pressweek.reports.write;

import pressweek.reports.compare.SideBySide;
import pressweek.reports.markup.Element;
import pressweek.reports.markup.PageResource;

/**
 * What the pages of a comparison have round their content: the style of a plan's page, and more.
 */
final class CompareFrame {
  private static final PageResource STYLE =
      new PageResource(
          PageResource.beside(PageStyle.class, "page.css").text()
              + PageResource.beside(PageStyle.class, "compare.css").text());
  private static final PageResource SCRIPT = PageResource.beside(PageStyle.class, "page.js");

  private CompareFrame() {}

  /** The page with this body. */
  static String html(SideBySide all, String name, Element body) {
    Element page =
        Element.of("html")
            .attr("lang", "en")
            .add(head(all, name))
            .add(body.add(Element.verbatim("script", SCRIPT.text())));
    return "<!DOCTYPE html>\n" + page + "\n";
  }

  private static Element head(SideBySide all, String name) {
    String policy =
        "default-src 'none'; style-src "
            + STYLE.hash()
            + "; script-src "
            + SCRIPT.hash()
            + "; base-uri 'none'; form-action 'none'";
    return Element.of("head")
        .add(Element.of("meta").attr("charset", "UTF-8"))
        .add(
            Element.of("meta")
                .attr("http-equiv", "Content-Security-Policy")
                .attr("content", policy))
        .add(
            Element.of("meta")
                .attr("name", "viewport")
                .attr("content", "width=device-width, initial-scale=1"))
        .add(Element.of("meta").attr("name", "color-scheme").attr("content", "light dark"))
        .add("title", name + (all.plant().isBlank() ? "" : ", " + all.plant()))
        .add(Element.verbatim("style", STYLE.text()));
  }

  /** Seen on paper only: what the sheet is, and when it was printed. */
  static Element sheet(SideBySide all, String id, Element body) {
    String made = all.clock().map(c -> "made " + c.moment(all.madeMin())).orElse("");
    Element line =
        Element.of("div", "printline")
            .add("strong", "Scenarios side by side")
            .add("span", all.plant())
            .add("span", made)
            .add(Element.of("span", "printed").text("printed ____________"));
    Element head = Element.of("div", "sheethead").attr("aria-hidden", "true").add(line);
    return Element.of("section", "sheet").attr("id", id).add(head).add(body);
  }
}
