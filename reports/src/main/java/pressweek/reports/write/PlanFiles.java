package pressweek.reports.write;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import pressweek.data.problem.Press;
import pressweek.reports.calendar.PlanCalendar;
import pressweek.reports.listing.Listing;
import pressweek.reports.schedule.PlanBook;

/**
 * Everything that a plan is written as besides {@code plan.json}: the page, the lists, the
 * workbook, the calendars and the papers. {@code docs/output-files.md} describes them.
 */
public final class PlanFiles {
  private PlanFiles() {}

  /** The content of every file by its path in the folder of the plan, with {@code /}. */
  public static Map<String, byte[]> of(Edition edition) {
    List<Listing> lists = PlanLists.of(edition);
    List<Part> parts = PlanParts.lists(edition, lists);
    List<Draft> drafts = new ArrayList<>();
    drafts.add(text("index.html", () -> PlanPage.html(edition, parts)));
    lists.forEach(list -> drafts.add(text(list.name() + ".csv", () -> ListingCsv.csv(list))));
    drafts.add(new Draft("plan.xlsx", () -> PlanWorkbook.bytes(edition, lists)));
    drafts.add(text("calendar-presses.ics", () -> PlanCalendar.presses(edition.book())));
    drafts.add(text("calendar-setters.ics", () -> PlanCalendar.setters(edition.book())));
    calendars(edition.book()).forEach(drafts::add);
    parts.forEach(part -> drafts.add(paper(part.id(), edition, () -> part)));
    drafts.add(paper("labels", edition, () -> LabelSheet.part(edition.book())));
    Map<String, byte[]> files = new LinkedHashMap<>();
    List<byte[]> contents = drafts.parallelStream().map(draft -> draft.content().get()).toList();
    for (int i = 0; i < drafts.size(); i++) {
      files.put(drafts.get(i).path(), contents.get(i));
    }
    return files;
  }

  /** The whole plan on one page, {@code index.html}, alone. */
  public static byte[] page(Edition edition) {
    List<Listing> lists = PlanLists.of(edition);
    return utf8(PlanPage.html(edition, PlanParts.lists(edition, lists)));
  }

  /** A calendar a press, by a name that every file system takes; two presses never share one. */
  private static List<Draft> calendars(PlanBook book) {
    Map<String, Draft> drafts = new LinkedHashMap<>();
    for (Press press : book.presses()) {
      String plain = press.id().replaceAll("[^A-Za-z0-9_-]", "_");
      String name = plain;
      for (int i = 2; drafts.containsKey(name.toLowerCase(Locale.ROOT)); i++) {
        name = plain + "-" + i;
      }
      drafts.put(
          name.toLowerCase(Locale.ROOT),
          text("calendars/" + name + ".ics", () -> PlanCalendar.press(book, press)));
    }
    return List.copyOf(drafts.values());
  }

  /** A file that is yet to be written; files are made independently of each other. */
  private record Draft(String path, Supplier<byte[]> content) {}

  private static Draft text(String path, Supplier<String> text) {
    return new Draft(path, () -> utf8(text.get()));
  }

  private static Draft paper(String id, Edition edition, Supplier<Part> part) {
    return text("papers/" + id + ".html", () -> PaperPage.html(edition, part.get()));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
