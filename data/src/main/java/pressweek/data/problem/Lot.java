package pressweek.data.problem;

import java.util.OptionalInt;

/**
 * A lot in a bin.
 *
 * @param what insert part or other component
 * @param id lot number
 * @param bin bin
 * @param onHand pieces; grams of resin and masterbatch
 * @param receivedMin when it came in, minutes since 1970 UTC
 * @param expiresMin first minute when it may no longer be used; empty for never
 * @param status whether it may be used
 * @param reservedFor order ({@code order} or {@code order/line}) that it is reserved for; empty for
 *     free stock
 */
public record Lot(
    String what,
    String id,
    String bin,
    int onHand,
    int receivedMin,
    OptionalInt expiresMin,
    LotStatus status,
    String reservedFor) {}
