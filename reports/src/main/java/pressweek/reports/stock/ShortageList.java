package pressweek.reports.stock;

import pressweek.data.problem.Receipt;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;
import pressweek.reports.schedule.PlanBook;

/** What runs short in the week, as a list. */
public final class ShortageList {
  private static final String CAUTION =
      "Nothing has been substituted. Alternatives are alike by what inserts.csv says of them; the"
          + " drawing, the customer and, for food or restricted-substance work, the part's own"
          + " declaration decide.";

  private ShortageList() {}

  /** A row a component, what runs out first first. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    return new ListingColumns<Shortage>()
        .text("component", Shortage::what)
        .text("kind", s -> s.component().word())
        .text("words", Shortage::words)
        .time("runs_out", s -> clock.at(s.runsOutMin()))
        .number("short", s -> number(s.pieces()))
        .text("unit", s -> s.component().unit())
        .list("delays", s -> s.work().delays())
        .headed("delays runs")
        .list("stops", s -> s.work().stops())
        .headed("stops lines")
        .timeIfAny("receipt_usable", s -> s.cure().map(r -> clock.at(r.usableMin())))
        .headed("cured by receipt usable from")
        .numberIfAny("receipt_quantity", s -> s.cure().map(Receipt::quantity))
        .headed("of")
        .number("to_order", s -> number(s.supply().toOrder()))
        .number("held", s -> number(s.supply().held()))
        .list("alternatives", s -> s.supply().alternatives())
        .listing(
            "shortages",
            "Shortages",
            new Paper(CAUTION, "", false, "No run waits for a component, and no line lacks one."),
            Shortages.of(book));
  }

  private static int number(long pieces) {
    return (int) Math.min(Integer.MAX_VALUE, pieces);
  }
}
