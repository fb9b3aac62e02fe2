package pressweek.reports.changes;

import pressweek.reports.hours.PlantClock;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;
import pressweek.reports.schedule.PlanBook;

/** The change list as a list. */
public final class ChangeList {
  /**
   * What a setter should mind: clamp and lockout by OSHA 29 CFR 1910.147, hot melt and purge by the
   * resin makers' sheets.
   */
  public static final String CAUTION =
      "Lock out before reaching in; hot melt and purge burn. The machine manual, the resin sheet"
          + " and the site procedure rule.";

  private ChangeList() {}

  /** A row a change or a dismount, in order of time. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    return new ListingColumns<ChangeRow>()
        .time("start", r -> clock.at(r.span().fromMin()))
        .time("end", r -> clock.at(r.span().toMin()))
        .text("press", ChangeRow::press)
        .text("setter_shift", r -> r.shift().map(ShiftSpan::id).orElse(""))
        .text("mold_out", ChangeRow::moldOut)
        .text("mold_in", ChangeRow::moldIn)
        .list("kind", ChangeRow::kinds)
        .thousandths("purge_kg", ChangeRow::purgeG)
        .number("minutes", ChangeRow::minutes)
        .text("run", ChangeRow::run)
        .text("tooling_out", r -> r.setups().from().tooling())
        .text("tooling_in", r -> r.setups().to().tooling())
        .text("resin_out", r -> r.setups().from().resin())
        .text("resin_in", r -> r.setups().to().resin())
        .text("colour_out", r -> r.setups().from().colour())
        .text("colour_in", r -> r.setups().to().colour())
        .list("stays", ChangeRow::stays)
        .listing(
            "changes",
            "Changes",
            new Paper(CAUTION, "setter_shift", true, "Nothing has to be changed."),
            ChangeReport.rows(book));
  }
}
