package pressweek.reports.crew;

import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;
import pressweek.reports.schedule.PlanBook;

/** The crew list as a list. */
public final class CrewList {
  /** What whoever fills the shifts should mind. */
  private static final String CAUTION =
      "training, permits, breaks and rest are for the site procedure, local codes and licensed"
          + " people; the figures are estimates.";

  private CrewList() {}

  private static String caution(PlanBook book) {
    return book.plan().problem().plant().crew().people().isPresent()
        ? "Who may run what is as people.csv says; " + CAUTION
        : "Who may run what is not recorded: " + CAUTION;
  }

  /** By shift: a row for the whole plant, then a row a cell. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    ListingColumns<CrewRow> columns =
        new ListingColumns<CrewRow>()
            .text("shift", r -> r.shift().id())
            .time("from", r -> clock.at(r.shift().span().fromMin()))
            .offPaper()
            .time("to", r -> clock.at(r.shift().span().toMin()))
            .offPaper()
            .text("cell", CrewRow::cell)
            .number("people", r -> r.operators().people())
            .headed("operators, people")
            .thousandths("operators", r -> r.operators().thousandths())
            .headed("operators, at most")
            .thousandthsIfAny("operators_there", r -> r.operators().thereThousandths())
            .headed("operators there")
            .timeIfAny("most_at", r -> r.operators().atMin().map(clock::at))
            .headed("most at")
            .list("presses", r -> r.operators().presses())
            .headed("presses then, people each")
            .list("sharing", r -> r.operators().sharing())
            .headed("share an operator");
    return columns
        .number("setter_min", r -> r.setters().minutes())
        .headed("setter min needed")
        .numberIfAny("setter_min_there", r -> r.setters().availableMin())
        .headed("setter min there")
        .numberIfAny("setters_there", r -> r.setters().there())
        .headed("setters there")
        .list("too_few", CrewRow::shortages)
        .list("not_computed", CrewRow::notComputed)
        .list("may_run", r -> r.qualified().mayRun())
        .list("nobody_for", r -> r.qualified().nobodyFor())
        .headed("nobody may run")
        .listing(
            "crew",
            "Crew",
            new Paper(caution(book), "shift", false, "Nobody is needed."),
            CrewReport.rows(book));
  }
}
