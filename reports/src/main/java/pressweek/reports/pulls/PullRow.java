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
 * @param needByMin when they must be at the press, minutes since 1970 UTC: one lead time before the
 *     change begins, but not before a receipt that they come from
 * @param shift the shift in which it must be brought; empty when the plant has no shift near it
 * @param line the order line that it is for; empty when its run is not in the plan
 * @param named what it is
 * @param draw how it leaves its bin
 * @param cautions what to mind
 */
public record PullRow(
    Pull pull,
    int needByMin,
    Optional<ShiftSpan> shift,
    Optional<OrderLine> line,
    Named named,
    Draw draw,
    List<String> cautions) {
  public PullRow {
    cautions = List.copyOf(cautions);
  }

  /**
   * What is brought.
   *
   * @param component what it is of all components
   * @param words the insert in words
   * @param thread its thread as the plant writes it; empty without one
   */
  public record Named(Component component, String words, String thread) {}

  /** The caution as one text. */
  public String caution() {
    return String.join("; ", cautions);
  }

  /** The id of the shift: {@code 2026-12-01 early}; empty without one. */
  public String shiftId() {
    return shift.map(ShiftSpan::id).orElse("");
  }
}
