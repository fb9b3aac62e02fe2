package pressweek.reports.write;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Plan;
import pressweek.reports.listing.Listing;

/**
 * The lists of a plan as CSV files, UTF-8. Their columns are described in {@code
 * docs/output-files.md}.
 */
public final class PlanCsv {
  private PlanCsv() {}

  /** The content of every list by file name, for a plan that replaces none. */
  public static Map<String, String> files(Plan plan) {
    return files(PlanLists.of(Edition.first(plan, List.of())));
  }

  /** The content of lists by file name. */
  static Map<String, String> files(List<Listing> lists) {
    Map<String, String> files = new LinkedHashMap<>();
    lists.forEach(list -> files.put(list.name() + ".csv", ListingCsv.csv(list)));
    return files;
  }
}
