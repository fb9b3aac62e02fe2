package pressweek.reports.write;

import java.util.List;
import pressweek.data.plan.Head;
import pressweek.reports.markup.Element;

/**
 * A part of the page that begins a new sheet of paper when printed; every sheet bears who the plan
 * is and, where there is something to mind, a caution.
 */
final class Sheet {
  private final Edition edition;

  Sheet(Edition edition) {
    this.edition = edition;
  }

  /** A sheet with a heading. */
  Element of(Part part) {
    List<Element> heading = List.of(Element.of("h2").text(part.heading()));
    return of(part.id(), part.caution(), heading, part.content());
  }

  /** A sheet with its own elements for a heading and nothing in particular to mind. */
  Element of(String id, List<Element> headings, List<Element> content) {
    return of(id, "", headings, content);
  }

  /** A sheet with a caution and its own elements for a heading. */
  Element of(String id, String caution, List<Element> headings, List<Element> content) {
    Element body = Element.of("div", "sheetbody").addAll(headings).addAll(content);
    return Element.of("section", "sheet").attr("id", id).add(printHead(caution)).add(body);
  }

  /** Seen on paper only. The time of print is filled in by the page's script when it is printed. */
  private Element printHead(String caution) {
    Head head = edition.plan().head();
    String replaces = head.replaces().isEmpty() ? "" : "replaces " + head.replaces();
    String broken = edition.sound() ? "" : " \u2014 BREAKS HARD RULES, do not run";
    String plant = edition.plan().problem().plant().name();
    Element line =
        Element.of("div", "printline")
            .add("strong", "Plan " + head.number() + broken)
            .add("span", replaces)
            .add("span", plant)
            .add("span", "made " + edition.book().clock().moment(head.madeMin()))
            .add(Element.of("span", "printed").text("printed ____________"));
    Element whole = Element.of("div", "sheethead").attr("aria-hidden", "true").add(line);
    return caution.isEmpty() ? whole : whole.add(Element.of("div", "printcaution").text(caution));
  }
}
