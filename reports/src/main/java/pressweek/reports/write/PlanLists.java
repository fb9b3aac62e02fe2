package pressweek.reports.write;

import java.util.List;
import pressweek.reports.changes.ChangeList;
import pressweek.reports.handover.HandoverList;
import pressweek.reports.listing.Listing;
import pressweek.reports.pulls.PullList;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.ScheduleList;
import pressweek.reports.schedule.UnplacedList;
import pressweek.reports.stock.ShortageList;

/** Every list of a plan, in the order in which files and sheets come. A new list is added here. */
final class PlanLists {
  private PlanLists() {}

  static List<Listing> of(Edition edition) {
    PlanBook book = edition.book();
    return List.of(
        ScheduleList.of(book),
        PullList.of(book),
        ShortageList.of(book),
        ChangeList.of(book),
        UnplacedList.of(book),
        HandoverList.of(edition.handover(), book.clock()));
  }
}
