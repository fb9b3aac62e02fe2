package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import pressweek.reports.markup.Element;

/** One list as a page of its own, for those who print only theirs. */
final class PaperPage {
  private PaperPage() {}

  /** The page of a part. */
  static String html(Edition edition, Part part) {
    List<Element> headings = new ArrayList<>();
    headings.add(Element.of("h1").text(part.heading()));
    headings.add(Element.of("p", "identity screen").text(edition.identity()));
    if (!part.caution().isEmpty()) {
      headings.add(Element.of("p", "screen").text(part.caution()));
    }
    if (!edition.sound()) {
      headings.add(
          Element.of("div", "banner")
              .attr("role", "alert")
              .add("h2", "This plan breaks hard rules. Do not run it."));
    }
    Element main =
        Element.of("main")
            .add(new Sheet(edition).of(part.id(), part.caution(), headings, part.content()));
    return new PageFrame(edition, part.heading())
        .html(Element.of("body", "paper " + part.id() + "paper").add(main));
  }
}
