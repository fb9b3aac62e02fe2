package pressweek.app.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pressweek.reports.listing.Listing;

/** The papers of a plan by name, and what each of them is in words. */
final class Papers {
  private static final Map<String, String> TITLES =
      Map.of(
          "index.html", "The whole plan on one page",
          "plan.xlsx", "All lists as a workbook",
          "plan.json", "The plan for programs",
          "calendar-presses.ics", "Calendar of the presses",
          "calendar-setters.ics", "Calendar of the setters",
          "papers/labels.html", "Labels for the kits");

  private static final String SHEETS = "papers/";
  private static final String CALENDARS = "calendars/";

  private Papers() {}

  /** The sheet of a list; every list has one. */
  static String sheetOf(Listing list) {
    return SHEETS + list.name() + ".html";
  }

  /** What a paper is, in words. */
  static String title(String name, List<Listing> lists) {
    if (TITLES.containsKey(name)) {
      return TITLES.getOrDefault(name, name);
    }
    int dot = name.lastIndexOf('.');
    if (name.startsWith(CALENDARS)) {
      return "Calendar of press " + name.substring(CALENDARS.length(), dot);
    }
    String list = name.substring(name.startsWith(SHEETS) ? SHEETS.length() : 0, dot);
    Optional<String> title =
        lists.stream().filter(l -> l.name().equals(list)).map(Listing::title).findFirst();
    String kind = name.substring(dot + 1).toUpperCase(Locale.ROOT);
    return title
        .map(t -> name.startsWith(SHEETS) ? t + ", to print" : t + ", as " + kind)
        .orElse(name);
  }
}
