package pressweek.data.problem;

import java.util.List;

/**
 * Components at hand and on the way.
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

  /**
   * True when stock of a component is counted: of an insert part when the plant gave lots, of any
   * other when it has a lot or a receipt of it.
   */
  public boolean counts(Component component, String what) {
    return component == Component.INSERT
        ? checked
        : lots.stream().anyMatch(lot -> lot.what().equals(what))
            || receipts.stream().anyMatch(receipt -> receipt.what().equals(what));
  }
}
