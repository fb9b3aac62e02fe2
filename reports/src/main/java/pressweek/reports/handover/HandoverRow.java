package pressweek.reports.handover;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import pressweek.data.plan.Run;

/**
 * A run or an order line that is not as it was.
 *
 * @param what what changed, in the order of the enum; at least one
 * @param order order number
 * @param line line number
 * @param item item code
 * @param before the run in the plan that is replaced; empty when it had none
 * @param now the run in the plan; empty when it has none
 * @param reason why the line is not in the plan; empty when it is, or was not asked for
 */
public record HandoverRow(
    List<Difference> what,
    String order,
    String line,
    String item,
    Optional<RunState> before,
    Optional<RunState> now,
    String reason) {
  public HandoverRow {
    what = List.copyOf(what);
    if (what.isEmpty()) {
      throw new IllegalArgumentException("line " + order + "/" + line + " has not changed");
    }
  }

  /** The press that it concerns: where it runs now, else where it ran; empty for neither. */
  public String press() {
    return first(s -> s.run().press()).orElse("");
  }

  /** When it concerns the floor: the start now, else the start before; else after all others. */
  int startMin() {
    return first(s -> s.run().startMin()).orElse(Integer.MAX_VALUE);
  }

  /** The run number now, else before; empty for neither. */
  public String runId() {
    return first(s -> s.run()).map(Run::id).orElse("");
  }

  private <T> Optional<T> first(Function<RunState, T> part) {
    return Stream.of(now, before).flatMap(Optional::stream).map(part).findFirst();
  }
}
