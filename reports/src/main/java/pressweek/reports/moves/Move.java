package pressweek.reports.moves;

import java.util.Optional;
import pressweek.data.plan.Run;

/**
 * A run or an order line that is not where it was.
 *
 * @param kind what became of it
 * @param line {@code order/line}
 * @param item item code
 * @param before its run in the earlier plan; empty for none
 * @param now its run in the plan; empty for none
 * @param reason which event, or what pushed it
 * @param cost what the plan is charged for the move, thousandths of a cent
 */
public record Move(
    MoveKind kind,
    String line,
    String item,
    Optional<Run> before,
    Optional<Run> now,
    String reason,
    long cost) {}
