package pressweek.reports.write;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import pressweek.reports.changes.ChangeList;
import pressweek.reports.crew.CrewList;
import pressweek.reports.handover.HandoverList;
import pressweek.reports.kits.KitList;
import pressweek.reports.listing.Listing;
import pressweek.reports.pulls.PullList;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.ScheduleList;
import pressweek.reports.schedule.UnplacedList;
import pressweek.reports.staging.StagingList;
import pressweek.reports.stock.ShortageList;
import pressweek.reports.trace.ClearanceList;
import pressweek.reports.trace.TraceList;

/** Every list of a plan, in the order in which files and sheets come. A new list is added here. */
public final class PlanLists {
  private PlanLists() {}

  /** The lists of a plan. */
  public static List<Listing> of(Edition edition) {
    PlanBook book = edition.book();
    List<Listing> lists =
        Stream.<Supplier<Listing>>of(
                () -> ScheduleList.of(book),
                () -> PullList.of(book),
                () -> KitList.of(book),
                () -> ShortageList.of(book),
                () -> StagingList.of(book),
                () -> ChangeList.of(book),
                () -> CrewList.of(book),
                () -> UnplacedList.of(book),
                () -> ClearanceList.of(book),
                () -> TraceList.of(book),
                () -> HandoverList.of(edition.handover(), book.clock()))
            .parallel()
            .map(Supplier::get)
            .toList();
    return Stream.concat(lists.stream(), edition.more().stream()).toList();
  }
}
