package pressweek.reports.schedule;

import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;

/** The schedule as a list. */
public final class ScheduleList {
  /** What whoever works by the schedule should mind. */
  public static final String CAUTION =
      "Times are planned, not promised; computed clamp force, cooling and drying are estimates: the"
          + " resin sheet, the machine manual and the site procedure rule.";

  private ScheduleList() {}

  /** A row a run, by press in the plant's order, then by place. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    return new ListingColumns<ScheduleRow>()
        .text("run", r -> r.run().id())
        .text("press", r -> r.run().press())
        .number("seq", r -> r.run().seq())
        .text("order", r -> r.job().line().order())
        .text("line", r -> r.job().line().line())
        .text("item", r -> r.job().item().code())
        .text("mold", r -> r.run().mold())
        .text("resin", r -> r.job().resin())
        .text("colour", r -> r.job().colour())
        .list("insert", ScheduleRow::inserts)
        .number("quantity", r -> r.job().quantity().good())
        .number("shots", ScheduleRow::shots)
        .time("change_start", r -> clock.at(r.run().change().startMin()))
        .time("run_start", r -> clock.at(r.run().startMin()))
        .time("run_end", r -> clock.at(r.run().endMin()))
        .time("due", r -> clock.at(r.job().deadline().dueMin()))
        .number("late_min", ScheduleRow::lateMin)
        .number("change_min", r -> r.run().change().minutes())
        .list("change_kind", ScheduleRow::changeKinds)
        .list("waits_for", ScheduleRow::waitsFor)
        .time("ready", r -> clock.at(r.run().readyMin()))
        .text("stays", r -> r.stay().word())
        .text("tooling", r -> r.run().change().to().tooling())
        .text("customer", r -> r.job().line().customer())
        .text("note", r -> r.job().line().note())
        .listing(
            "schedule",
            "Schedule by press",
            new Paper(CAUTION, "press", false, "There is no run."),
            ScheduleReport.rows(book));
  }
}
