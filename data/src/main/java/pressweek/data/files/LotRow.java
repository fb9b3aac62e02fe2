package pressweek.data.files;

import java.util.Optional;
import pressweek.data.problem.LotStatus;

/**
 * A row of {@code lots.csv}: a lot in a bin.
 *
 * @param at where it stands
 * @param what insert part or other component
 * @param lot lot number
 * @param bin bin; may be empty
 * @param onHand what is there
 * @param received when it came in; empty when not known
 * @param expires when it may no longer be used; empty for never
 * @param status whether it may be used
 * @param reservedFor order, or {@code order/line}; empty for free stock
 */
public record LotRow(
    At at,
    String what,
    String lot,
    String bin,
    Amount onHand,
    Optional<When> received,
    Optional<When> expires,
    LotStatus status,
    String reservedFor) {}
