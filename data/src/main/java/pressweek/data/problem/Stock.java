package pressweek.data.problem;

import java.util.List;

/**
 * Inserts at hand and on the way.
 *
 * @param checked false when the plant gave no lots: then insert stock is not checked at all
 * @param lots lots in bins
 * @param receipts deliveries on the way
 */
public record Stock(boolean checked, List<Lot> lots, List<Receipt> receipts) {
  public Stock {
    lots = List.copyOf(lots);
    receipts = List.copyOf(receipts);
  }
}
