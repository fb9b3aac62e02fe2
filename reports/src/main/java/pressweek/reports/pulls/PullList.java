package pressweek.reports.pulls;

import pressweek.data.declared.Needs;
import pressweek.data.problem.OrderLine;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;
import pressweek.reports.schedule.PlanBook;

/** The pull list as a list. */
public final class PullList {
  private static final String CAUTION =
      "Take from the bin and lot named, and try the thread gauge where a caution names it; food and"
          + " restricted-substance claims rest on the lot's own papers";

  private PullList() {}

  /** What to mind, with the rule where an order of the plan leans on it. */
  static String caution(PlanBook book) {
    boolean restricted =
        book.plan().runs().stream().anyMatch(run -> Needs.of(book.job(run)).contains(Needs.ROHS));
    return restricted ? CAUTION + " (RoHS: Directive 2011/65/EU, Annex II)." : CAUTION + ".";
  }

  /** A row a pull, by shift, then by press in the plant's order, then in walking order of bins. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    return new ListingColumns<PullRow>()
        .time("need_by", r -> clock.at(r.needByMin()))
        .text("shift", PullRow::shiftId)
        .text("press", r -> r.pull().press())
        .text("run", r -> r.pull().run())
        .text("order", r -> r.line().map(OrderLine::order).orElse(""))
        .text("line", r -> r.line().map(OrderLine::line).orElse(""))
        .text("insert", r -> r.pull().insert())
        .text("words", r -> r.named().words())
        .text("thread", r -> r.named().thread())
        .text("bin", r -> r.pull().bin())
        .text("lot", r -> r.pull().lot())
        .number("pieces", r -> r.pull().pieces())
        .text("caution", PullRow::caution)
        .text("kind", r -> r.named().component().word())
        .text("unit", r -> r.named().component().unit())
        .text("draw", r -> r.draw().words())
        .offPaper()
        .numberIfAny("in_bin", r -> r.draw().inBin())
        .offPaper()
        .number("bring", r -> r.draw().bring())
        .offPaper()
        .number("back", r -> r.draw().back())
        .offPaper()
        .text("back_to", r -> r.pull().bin())
        .offPaper()
        .listing(
            "pulls",
            "Pull list",
            new Paper(caution(book), "shift", true, "There are no inserts to bring."),
            PullReport.rows(book));
  }
}
