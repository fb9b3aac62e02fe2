package pressweek.data.plan;

import java.util.List;
import pressweek.data.problem.Setup;

/**
 * What happens on a press between two runs.
 *
 * @param from how the press was set up
 * @param to how it is set up for the run
 * @param kinds what is exchanged, in the order of the enum; empty when nothing is
 * @param startMin start, minutes since 1970 UTC; equals the end when nothing is exchanged
 * @param endMin end
 * @param minutes working minutes, breaks not counted
 * @param purgeG resin purged, grams
 */
public record Change(
    Setup from,
    Setup to,
    List<ChangeKind> kinds,
    int startMin,
    int endMin,
    int minutes,
    int purgeG) {
  public Change {
    kinds = List.copyOf(kinds);
  }
}
