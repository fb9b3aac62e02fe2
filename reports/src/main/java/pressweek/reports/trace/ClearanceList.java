package pressweek.reports.trace;

import java.util.List;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.trace.Clearance.Check;

/** The line clearances as a list. */
public final class ClearanceList {
  /** What whoever clears a line should mind. */
  public static final String CAUTION =
      "Lock out before reaching in. The site's clearance procedure rules; Pressweek never certifies"
          + " that a line is clean or a part fit for food.";

  private ClearanceList() {}

  private record Row(Clearance clearance, Check check) {}

  /** A row a check; who did it and who saw it is filled in by hand. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    return new ListingColumns<Row>()
        .text("run", r -> r.clearance().run().id())
        .text("press", r -> r.clearance().run().press())
        .time("before", r -> clock.at(r.clearance().run().startMin()))
        .text("order", r -> r.clearance().job().line().order())
        .text("line", r -> r.clearance().job().line().line())
        .text("item", r -> r.clearance().job().line().item())
        .text("check", r -> r.check().what())
        .text("words", r -> r.check().words())
        .text("cleared_by", r -> "")
        .text("second_person", r -> "")
        .listing(
            "clearance",
            "Line clearance",
            new Paper(CAUTION, "run", true, "There is no food-grade run."),
            rows(book));
  }

  private static List<Row> rows(PlanBook book) {
    return ClearanceReport.of(book).stream()
        .flatMap(clearance -> clearance.checks().stream().map(c -> new Row(clearance, c)))
        .toList();
  }
}
