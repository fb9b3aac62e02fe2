package pressweek.reports.handover;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Plan;

/**
 * What a plan changes against the one that it replaces.
 *
 * @param compared false when there is no earlier plan to compare with
 * @param replaced number of the earlier plan; empty without one
 * @param rows what changed, by press in the plant's order, then by time
 */
public record Handover(boolean compared, String replaced, List<HandoverRow> rows) {
  public Handover {
    rows = List.copyOf(rows);
  }

  /** The handover of a plan that replaces none. */
  public static Handover none() {
    return new Handover(false, "", List.of());
  }

  /** The handover from an earlier plan to the one that replaces it. */
  public static Handover between(Plan earlier, Plan plan) {
    List<HandoverRow> rows = new ArrayList<>(new Differences(earlier, plan).rows());
    return new Handover(true, earlier.head().number(), rows);
  }

  /** What there is to say where there are no rows. */
  public String whenEmpty() {
    return compared
        ? "Nothing has changed for the floor since plan " + replaced + "."
        : "There is no earlier plan to compare with.";
  }
}
