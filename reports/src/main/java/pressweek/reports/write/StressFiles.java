package pressweek.reports.write;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.reports.listing.Listing;
import pressweek.reports.stress.StressLists;
import pressweek.reports.stress.StressReport;

/** How sure a plan is, as files: its lists as CSV and a page. */
public final class StressFiles {
  private StressFiles() {}

  /** The content of every file by its name. */
  public static Map<String, byte[]> of(StressReport report) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    List<Listing> lists =
        List.of(StressLists.lines(report), StressLists.gains(report), StressLists.slack(report));
    for (Listing list : lists) {
      files.put(list.name() + ".csv", ListingCsv.csv(list).getBytes(StandardCharsets.UTF_8));
    }
    files.put("stress.html", StressPage.html(report).getBytes(StandardCharsets.UTF_8));
    return files;
  }
}
