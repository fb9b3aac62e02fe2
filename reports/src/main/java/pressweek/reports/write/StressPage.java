package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.stress.StressLead;
import pressweek.reports.stress.StressLists;
import pressweek.reports.stress.StressReport;

/** How sure a plan is, as one page that needs nothing else. */
final class StressPage {
  private final StressReport report;
  private final StressLead lead;
  private final Edition edition;
  private final PlantClock clock;

  private StressPage(StressReport report) {
    this.report = report;
    this.lead = new StressLead(report);
    this.edition = Edition.first(report.plan(), List.of());
    this.clock = PlanBook.of(report.plan()).clock();
  }

  static String html(StressReport report) {
    return new StressPage(report).page();
  }

  private String page() {
    Sheet sheet = new Sheet(edition);
    List<Element> headings =
        List.of(
            Element.of("h1").text("How sure is the plan?"),
            Element.of("p", "identity").text(edition.identity()));
    Element main =
        Element.of("main")
            .add(sheet.of("summary", headings, summary()))
            .add(list(sheet, StressLists.gains(report), List.of()))
            .add(list(sheet, StressLists.slack(report), lead.slack()))
            .add(list(sheet, StressLists.lines(report), List.of(lead.slackNeeded())));
    return new PageFrame(edition, "How sure").html(Element.of("body").add(nav()).add(main));
  }

  private Element nav() {
    return Element.of("nav")
        .attr("aria-label", "On this page")
        .add(link("stress_gains", "What would bring most"))
        .add(link("stress_slack", "More time"))
        .add(link("stress", "Order lines"));
  }

  private static Element link(String id, String words) {
    return Element.of("a").attr("href", "#" + id).text(words);
  }

  /** A list with what is to be known about it. */
  private Element list(Sheet sheet, Listing list, List<String> words) {
    List<Element> content = new ArrayList<>();
    if (!words.isEmpty()) {
      content.add(Element.of("p").text(String.join(" ", words)));
    }
    content.addAll(ListingTable.content(list, clock));
    return sheet.of(new Part(list.name(), list.title(), list.paper().caution(), content));
  }

  private List<Element> summary() {
    List<Element> parts = new ArrayList<>();
    List<String> sentences = new ArrayList<>(lead.sentences());
    sentences.add(lead.wholeWeek());
    parts.add(Element.of("p", "lead").text(String.join(" ", sentences)));
    parts.add(
        new PageTable<StressLead.Row>("narrow")
            .caption("By the plan and under other luck (estimates)")
            .text("what", StressLead.Row::what)
            .figure("by the plan", StressLead.Row::planned)
            .figure("in the mean", StressLead.Row::mean)
            .figure("95 % interval", StressLead.Row::interval)
            .rows(lead.rows())
            .element());
    if (!lead.comparison().isEmpty()) {
      parts.add(Element.of("h2").text("Against the other plan, under the same luck"));
      parts.add(Element.of("p").text(String.join(" ", lead.comparison())));
    }
    parts.add(Element.of("p").text(lead.shakyHeading()));
    Element basis = Element.of("ul");
    lead.basis().forEach(b -> basis.add("li", b));
    parts.add(Element.of("div", "notchecked").add("h2", "What the luck rests on").add(basis));
    return parts;
  }
}
