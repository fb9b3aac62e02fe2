package pressweek.reports.staging;

import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;
import pressweek.reports.schedule.PlanBook;

/** The staging list as a list. */
public final class StagingList {
  /** Whoever loads resin should mind this; moisture and hours by the resin makers' sheets. */
  public static final String CAUTION =
      "Estimates: resin sheet and machine manual rule, moisture is measured. Hot hoppers burn."
          + " Keep apart what must never meet; site procedure and local codes rule.";

  private StagingList() {}

  /** A row a run, by the shift that loads it, then by press in the plant's order, then by time. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    ListingColumns<StagingRow> columns =
        new ListingColumns<StagingRow>()
            .time("need_by", r -> clock.at(r.needByMin()))
            .text("shift", StagingRow::shiftId)
            .text("press", r -> r.run().press())
            .text("run", r -> r.run().id())
            .text("order", r -> r.job().line().order())
            .offPaper()
            .text("line", r -> r.job().line().line())
            .offPaper()
            .text("resin", r -> r.job().resin())
            .text("colour", r -> r.job().colour())
            .text("where", r -> r.drying().where())
            .headed("load into");
    plastic(columns);
    drying(columns, clock);
    return columns
        .time("first_shot", r -> clock.at(r.run().startMin()))
        .list("caution", StagingRow::cautions)
        .list("not_computed", StagingRow::notComputed)
        .text("basis", r -> "estimate")
        .offPaper()
        .listing(
            "staging",
            "Staging: what to load",
            new Paper(CAUTION, "shift", true, "There is no resin to load."),
            StagingReport.rows(book));
  }

  private static void plastic(ListingColumns<StagingRow> columns) {
    columns
        .thousandthsIfAny("resin_kg", r -> r.batch().resinG())
        .headed("resin kg, estimate")
        .text("masterbatch", r -> r.batch().masterbatch())
        .thousandthsIfAny("masterbatch_kg", r -> r.batch().masterbatchG())
        .headed("master- batch kg, estimate")
        .thousandthsIfAny("plastic_kg", r -> r.batch().plasticG())
        .headed("all kg, start-up and purge counted")
        .thousandthsIfAny("startup_kg", r -> r.batch().startupG())
        .offPaper()
        .thousandths("purge_kg", r -> r.batch().purgeG())
        .offPaper();
  }

  private static void drying(ListingColumns<StagingRow> columns, PlantClock clock) {
    columns
        .text("dryer", r -> r.drying().dryer())
        .offPaper()
        .timeIfAny("dry_from", r -> r.drying().fromMin().map(clock::at))
        .headed("start drying by, estimate")
        .decimalIfAny("dry_h", r -> r.drying().hours())
        .decimalIfAny("dry_c", r -> r.drying().celsius())
        .decimalIfAny("hopper_needed_l", r -> r.drying().neededL())
        .decimalIfAny("hopper_l", r -> r.drying().hopperL());
  }
}
