package pressweek.solver.repair;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Stock;

/** The stock that is left when what has been brought to presses is gone. */
final class StockLeft {
  private final Map<String, Integer> takenOfLot = new HashMap<>();
  private final Map<String, Integer> takenOfReceipt = new HashMap<>();

  private StockLeft() {}

  /**
   * The materials with what is left.
   *
   * @param plan the earlier plan
   * @param brought runs of it whose pulls have been brought
   * @param events lots on hold among them
   */
  static Materials of(Plan plan, Set<String> brought, List<FloorEvent> events) {
    StockLeft left = new StockLeft();
    for (Pull pull : plan.pulls()) {
      if (brought.contains(pull.run())) {
        left.take(pull);
      }
    }
    Materials was = plan.problem().materials();
    Stock stock = was.stock();
    List<Lot> lots = new ArrayList<>();
    for (Lot lot : stock.lots()) {
      boolean held = events.stream().anyMatch(e -> e.says(EventKind.LOT_HELD, lot.id()));
      lots.add(left.lot(lot, held));
    }
    lots.removeIf(lot -> lot.onHand() == 0);
    List<Receipt> receipts = new ArrayList<>(stock.receipts().stream().map(left::receipt).toList());
    receipts.removeIf(receipt -> receipt.quantity() == 0);
    return new Materials(
        was.resins(),
        was.colours(),
        was.inserts(),
        new Stock(stock.checked(), lots, receipts),
        was.preparation());
  }

  private void take(Pull pull) {
    if (!pull.lot().isEmpty()) {
      takenOfLot.merge(pull.insert() + "\n" + pull.lot(), pull.pieces(), Integer::sum);
    } else if (pull.receiptMin() > 0) {
      takenOfReceipt.merge(pull.insert() + "\n" + pull.receiptMin(), pull.pieces(), Integer::sum);
    }
  }

  private Lot lot(Lot lot, boolean held) {
    int left = left(takenOfLot, lot.what() + "\n" + lot.id(), lot.onHand());
    return new Lot(
        lot.what(),
        lot.id(),
        lot.bin(),
        left,
        lot.receivedMin(),
        lot.expiresMin(),
        held ? LotStatus.HELD : lot.status(),
        lot.reservedFor());
  }

  private Receipt receipt(Receipt receipt) {
    String key = receipt.what() + "\n" + receipt.usableMin();
    return new Receipt(
        receipt.what(),
        left(takenOfReceipt, key, receipt.quantity()),
        receipt.expectedMin(),
        receipt.usableMin());
  }

  /**
   * What is left of so many pieces; what they do not suffice for comes from the next of the key.
   */
  private static int left(Map<String, Integer> taken, String key, int pieces) {
    int gone = Math.min(pieces, taken.getOrDefault(key, 0));
    taken.merge(key, -gone, Integer::sum);
    return pieces - gone;
  }
}
