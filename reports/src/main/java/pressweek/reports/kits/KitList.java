package pressweek.reports.kits;

import java.util.List;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;
import pressweek.reports.schedule.PlanBook;

/** The kits as a list. */
public final class KitList {
  /** What whoever lays out or receives a kit should mind. */
  public static final String CAUTION =
      "A kit goes to the press whole and signed; what differs from it is asked about before the run"
          + " starts, by the site procedure.";

  private KitList() {}

  private record Row(Kit kit, KitPart part) {}

  /** A row a part of a kit. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    return new ListingColumns<Row>()
        .text("run", r -> r.kit().run().id())
        .text("press", r -> r.kit().run().press())
        .time("ready_by", r -> clock.at(r.kit().readyByMin()))
        .text("order", r -> r.kit().job().line().order())
        .text("line", r -> r.kit().job().line().line())
        .text("item", r -> r.kit().job().line().item())
        .number("good", r -> r.kit().job().quantity().good())
        .text("part", r -> r.part().kind().words())
        .text("what", r -> r.part().what())
        .text("words", r -> r.part().words())
        .text("bin", r -> r.part().bin())
        .text("lot", r -> r.part().lot())
        .numberIfAny("pieces", r -> r.part().pieces())
        .thousandthsIfAny("kg", r -> r.part().grams())
        .text("note", r -> r.part().note())
        .list("signs", r -> r.kit().signs())
        .listing(
            "kits",
            "Kits",
            new Paper(CAUTION, "run", true, "There is no kit to lay out."),
            rows(KitReport.kits(book)));
  }

  private static List<Row> rows(List<Kit> kits) {
    return kits.stream()
        .flatMap(kit -> kit.parts().stream().map(part -> new Row(kit, part)))
        .toList();
  }
}
