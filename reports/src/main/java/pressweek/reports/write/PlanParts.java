package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import pressweek.reports.listing.Listing;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.Cautions;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.wall.WeekWall;

/**
 * The parts of a plan's page. A list becomes a part of its own; some have a sheet made for them,
 * all others are shown as they are defined.
 */
final class PlanParts {
  private static final String HANDOVER = "handover";

  private PlanParts() {}

  /** All parts in the order in which they are read, those without content as well. */
  static List<Part> page(Edition edition, List<Part> lists) {
    PlanBook book = edition.book();
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("wall", "Week wall", "", List.of(WeekWall.of(book))));
    if (edition.handover().compared()) {
      lists.stream().filter(p -> p.id().equals(HANDOVER)).forEach(parts::add);
    }
    lists.stream().filter(p -> !p.id().equals(HANDOVER)).forEach(parts::add);
    parts.add(new Part("cost", "What it costs", "", cost(edition)));
    parts.add(new Part("cautions", "Cautions", "", List.of(cautions(book))));
    return parts;
  }

  /** The lists as parts. */
  static List<Part> lists(Edition edition, List<Listing> lists) {
    return lists.stream()
        .map(l -> new Part(l.name(), l.title(), l.paper().caution(), content(edition, l)))
        .toList();
  }

  private static List<Element> content(Edition edition, Listing list) {
    PlanBook book = edition.book();
    return switch (list.name()) {
      case "schedule" -> new ScheduleSheet(book).content();
      case "pulls" -> new PullSheet(book).content();
      case "changes" -> new ChangeSheet(book).content();
      case HANDOVER -> new HandoverSheet(book).content(edition.handover());
      default -> ListingTable.content(list, book.clock());
    };
  }

  private static List<Element> cost(Edition edition) {
    return edition.sound() ? new CostSheet(edition.plan()).content() : List.of();
  }

  private static Element cautions(PlanBook book) {
    Element list = Element.of("ul", "cautions");
    Cautions.of(book).forEach(c -> list.add("li", c));
    return list;
  }
}
