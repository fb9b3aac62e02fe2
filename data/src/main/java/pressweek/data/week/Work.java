package pressweek.data.week;

import java.util.Optional;
import pressweek.data.files.OrderRow;
import pressweek.data.files.ResinRow;
import pressweek.data.files.RunningRow;

/**
 * An order line that is known well enough to look for molds and presses.
 *
 * @param order its row
 * @param item what it is
 * @param good good pieces to make
 * @param resin the plant's record of its resin; empty when there is none
 * @param foodGrade true when only presses for food-grade work may run it
 * @param running the press on which it is running; empty when it is not
 */
record Work(
    OrderRow order,
    ReadItem item,
    int good,
    Optional<ResinRow> resin,
    boolean foodGrade,
    Optional<RunningRow> running) {}
