package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.trace.Clearance;
import pressweek.reports.trace.ClearanceReport;

/** The line clearances, each with boxes to tick twice and lines to sign on. */
final class ClearanceSheet {
  private static final List<String> SIGN =
      List.of("cleared by", "checked by a second person", "run released by");

  private final PlanBook book;

  ClearanceSheet(PlanBook book) {
    this.book = book;
  }

  /** A card a food-grade run; nothing when there is none. */
  List<Element> content() {
    List<Element> cards = new ArrayList<>();
    ClearanceReport.of(book).forEach(clearance -> cards.add(card(clearance)));
    return cards;
  }

  private Element card(Clearance clearance) {
    PlantClock clock = book.clock();
    String made = clearance.job().line().item() + ", for line " + clearance.job().id();
    return Element.of("section", "card")
        .add(
            "h3",
            clearance.run().id()
                + " on "
                + clearance.run().press()
                + ", before "
                + clock.brief(clearance.run().startMin()))
        .add("p", made)
        .add(
            new PageTable<Clearance.Check>("clearance")
                .ticks("clear")
                .ticks("seen")
                .key("check", Clearance.Check::what)
                .text("what", Clearance.Check::words)
                .widths(List.of(14, 78))
                .rows(clearance.checks())
                .element())
        .add(Signatures.of(SIGN));
  }
}
