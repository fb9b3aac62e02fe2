package pressweek.reports.pulls;

import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Component;
import pressweek.data.problem.OrderLine;
import pressweek.reports.hours.ShiftSpan;

/**
 * A pull as a row of the pull list.
 *
 * @param pull the pull
 * @param shift the shift in which it must be brought; empty when the plant has no shift near it
 * @param line the order line that it is for; empty when its run is not in the plan
 * @param component what it is
 * @param words what the insert is, in words
 * @param thread its thread as the plant writes it; empty without one
 * @param cautions what to mind
 */
public record PullRow(
    Pull pull,
    Optional<ShiftSpan> shift,
    Optional<OrderLine> line,
    Component component,
    String words,
    String thread,
    List<String> cautions) {
  public PullRow {
    cautions = List.copyOf(cautions);
  }

  /** The caution as one text. */
  public String caution() {
    return String.join("; ", cautions);
  }

  /** The id of the shift: {@code 2026-12-01 early}; empty without one. */
  public String shiftId() {
    return shift.map(ShiftSpan::id).orElse("");
  }
}
