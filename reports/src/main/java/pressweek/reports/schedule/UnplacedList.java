package pressweek.reports.schedule;

import pressweek.data.problem.Unplaced;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;

/** The order lines that are not in the plan, as a list. */
public final class UnplacedList {
  private static final String CAUTION =
      "Nothing of these lines is made until what would cure it is done; a missing record is never"
          + " taken for a good one.";

  private UnplacedList() {}

  /** A row a line, in the plan's order. */
  public static Listing of(PlanBook book) {
    return new ListingColumns<Unplaced>()
        .text("order", Unplaced::order)
        .text("line", Unplaced::line)
        .text("item", Unplaced::item)
        .text("reason", Unplaced::reason)
        .text("cure", Unplaced::cure)
        .headed("what would cure it")
        .number("pieces", Unplaced::pieces)
        .listing(
            "unplaced",
            "Unplaced lines",
            new Paper(CAUTION, "", false, "Every line is in the plan."),
            book.plan().unplaced());
  }
}
