package pressweek.reports.write;

import java.util.List;
import pressweek.data.plan.Head;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;

/**
 * A part of the page that begins a new sheet of paper when printed; every sheet bears who the plan
 * is.
 */
final class Sheet {
  private final PlanBook book;
  private final List<String> findings;

  Sheet(PlanBook book, List<String> findings) {
    this.book = book;
    this.findings = List.copyOf(findings);
  }

  /** A sheet with a heading. */
  Element of(String id, String heading, List<Element> content) {
    return of(id, List.of(Element.of("h2").text(heading)), content);
  }

  /** A sheet with its own elements for a heading. */
  Element of(String id, List<Element> headings, List<Element> content) {
    Element body = Element.of("div", "sheetbody").addAll(headings).addAll(content);
    return Element.of("section", "sheet").attr("id", id).add(printHead()).add(body);
  }

  /** Seen on paper only. The time of print is filled in by the page's script when it is printed. */
  private Element printHead() {
    Head head = book.plan().head();
    String replaces = head.replaces().isEmpty() ? "" : ", replaces " + head.replaces();
    String broken = findings.isEmpty() ? "" : " \u2014 BREAKS HARD RULES, do not run";
    String plant = book.plan().problem().plant().name();
    Element line =
        Element.of("div", "printline")
            .add("strong", "Plan " + head.number() + broken)
            .add("span", replaces.replaceFirst("^, ", ""))
            .add("span", plant)
            .add("span", "made " + book.clock().moment(head.madeMin()))
            .add(Element.of("span", "printed").text("printed ____________"));
    return Element.of("div", "sheethead").attr("aria-hidden", "true").add(line);
  }
}
