package pressweek.data.files;

/**
 * A row of {@code stock.csv}: finished goods.
 *
 * @param at where it stands
 * @param item item code
 * @param onHand pieces
 * @param reservedFor order, or {@code order/line}; empty for free pieces
 */
public record StockRow(At at, String item, int onHand, String reservedFor) {}
