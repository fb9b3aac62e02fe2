package pressweek.reports.pulls;

import pressweek.data.problem.OrderLine;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;
import pressweek.reports.schedule.PlanBook;

/** The pull list as a list. */
public final class PullList {
  /** What whoever brings inserts should mind. */
  public static final String CAUTION =
      "Take from the bin and lot named, and try the thread gauge where a caution names it; food and"
          + " restricted-substance claims rest on the lot's own papers.";

  private PullList() {}

  /** A row a pull, by shift, then by press in the plant's order, then by time. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    return new ListingColumns<PullRow>()
        .time("need_by", r -> clock.at(r.pull().needByMin()))
        .text("shift", PullRow::shiftId)
        .text("press", r -> r.pull().press())
        .text("run", r -> r.pull().run())
        .text("order", r -> r.line().map(OrderLine::order).orElse(""))
        .text("line", r -> r.line().map(OrderLine::line).orElse(""))
        .text("insert", r -> r.pull().insert())
        .text("words", PullRow::words)
        .text("thread", PullRow::thread)
        .text("bin", r -> r.pull().bin())
        .text("lot", r -> r.pull().lot())
        .number("pieces", r -> r.pull().pieces())
        .text("caution", PullRow::caution)
        .text("kind", r -> r.component().word())
        .text("unit", r -> r.component().unit())
        .listing(
            "pulls",
            "Pull list",
            new Paper(CAUTION, "shift", true, "There are no inserts to bring."),
            PullReport.rows(book));
  }
}
