package pressweek.data.problem;

/**
 * Pieces of an insert part that a run takes from stock.
 *
 * @param insert insert part
 * @param pieces pieces for the run itself, with samples and insert loss, less what is reserved in
 *     lots for this order
 * @param startupPieces further pieces for start-up shots, taken only when the run begins with a
 *     change
 * @param reservedPieces pieces that come from lots reserved for this order and so not from free
 *     stock
 */
public record Take(String insert, int pieces, int startupPieces, int reservedPieces) {}
