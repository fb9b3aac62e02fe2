package pressweek.reports.write;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.reports.calendar.PlanCalendar;
import pressweek.reports.listing.Listing;

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
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("index.html", utf8(PlanPage.html(edition, parts)));
    PlanCsv.files(lists).forEach((name, csv) -> files.put(name, utf8(csv)));
    files.put("plan.xlsx", PlanWorkbook.bytes(edition, lists));
    files.put("calendar-presses.ics", utf8(PlanCalendar.presses(edition.book())));
    files.put("calendar-setters.ics", utf8(PlanCalendar.setters(edition.book())));
    parts.forEach(p -> paper(files, edition, p));
    paper(files, edition, LabelSheet.part(edition.book()));
    return files;
  }

  private static void paper(Map<String, byte[]> files, Edition edition, Part part) {
    files.put("papers/" + part.id() + ".html", utf8(PaperPage.html(edition, part)));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
