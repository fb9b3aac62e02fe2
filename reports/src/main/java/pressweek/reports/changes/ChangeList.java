package pressweek.reports.changes;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import pressweek.data.problem.Setup;
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
      "Lock out before reaching in; molds by crane, for their weight; hot melt and purge burn."
          + " Machine manual, resin sheet, site procedure, local codes and licensed people rule.";

  private ChangeList() {}

  /** A row a change or a dismount, in order of time. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    ListingColumns<ChangeWork> columns =
        new ListingColumns<ChangeWork>()
            .time("start", r -> clock.at(r.change().span().fromMin()))
            .time("end", r -> clock.at(r.change().span().toMin()))
            .text("press", r -> r.change().press())
            .text("setter_shift", r -> r.change().shift().map(ShiftSpan::id).orElse(""))
            .text("mold_out", r -> r.change().moldOut())
            .text("mold_in", r -> r.change().moldIn())
            .list("kind", r -> r.change().kinds())
            .thousandths("purge_kg", r -> r.change().purgeG())
            .number("minutes", r -> r.change().minutes())
            .text("run", r -> r.change().run())
            .text("tooling_out", r -> from(r).tooling())
            .text("tooling_in", r -> to(r).tooling())
            .text("resin_out", r -> from(r).resin())
            .text("resin_in", r -> to(r).resin())
            .text("colour_out", r -> from(r).colour())
            .text("colour_in", r -> to(r).colour())
            .list("stays", r -> r.change().stays());
    work(columns);
    return columns.listing(
        "changes",
        "Changes",
        new Paper(CAUTION, "setter_shift", true, "Nothing has to be changed."),
        ChangeWorkReport.rows(book));
  }

  private static void work(ListingColumns<ChangeWork> columns) {
    columns
        .number("at_once", r -> r.atOnce().most())
        .list("at_once_with", r -> r.atOnce().presses())
        .decimalIfAny("mold_out_kg", r -> decimal(r.out().weightKg()))
        .list("mold_out_to", r -> r.out().places())
        .decimalIfAny("mold_in_kg", r -> decimal(r.in().weightKg()))
        .list("mold_in_from", r -> r.in().places())
        .text("temperature", ChangeWork::temperature)
        .text("first_article", ChangeWork::firstArticle)
        .list("before", r -> r.tasks().before())
        .headed("while the press runs")
        .list("stopped", r -> r.tasks().stopped())
        .headed("press stopped")
        .list("not_computed", ChangeWork::notComputed);
  }

  private static Optional<BigDecimal> decimal(OptionalDouble value) {
    return value.isEmpty()
        ? Optional.empty()
        : Optional.of(BigDecimal.valueOf(value.getAsDouble()));
  }

  private static Setup from(ChangeWork row) {
    return row.change().setups().from();
  }

  private static Setup to(ChangeWork row) {
    return row.change().setups().to();
  }
}
