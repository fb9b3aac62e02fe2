package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Take;

/** Free stock of inserts over time and what runs take from it. */
final class InsertStock {
  private final Map<String, Long> lots = new HashMap<>();
  private final Map<String, List<Receipt>> receipts = new HashMap<>();
  private final Map<String, List<Draw>> draws = new HashMap<>();
  private final long leadMin;

  /**
   * Pieces that a run takes from free stock.
   *
   * @param stay the run
   * @param needMin when they must be at its press
   * @param pieces pieces
   */
  record Draw(Stay stay, long needMin, long pieces) {}

  InsertStock(Week week) {
    leadMin = week.problem().plant().crew().insertLeadMin();
    long endMin = week.problem().plant().hours().endMin();
    for (Lot lot : week.problem().materials().stock().lots()) {
      if (usable(lot, endMin) && lot.reservedFor().isEmpty()) {
        lots.merge(lot.what(), (long) lot.onHand(), Long::sum);
      }
    }
    for (Receipt receipt : week.problem().materials().stock().receipts()) {
      receipts.computeIfAbsent(receipt.what(), id -> new ArrayList<>()).add(receipt);
    }
    for (Stay stay : week.stays()) {
      Map<String, Long> pieces = new HashMap<>();
      for (Take take : stay.option().making().takes()) {
        pieces.merge(take.insert(), stay.freePieces(take), Long::sum);
      }
      pieces.forEach(
          (insert, count) ->
              draws
                  .computeIfAbsent(insert, id -> new ArrayList<>())
                  .add(new Draw(stay, needMin(stay.run().startMin()), count)));
    }
  }

  /** True when pieces of the lot may be used at any time of the plan. */
  static boolean usable(Lot lot, long horizonEndMin) {
    return lot.status() == LotStatus.USABLE
        && (lot.expiresMin().isEmpty() || lot.expiresMin().getAsInt() >= horizonEndMin);
  }

  long needMin(long runStartMin) {
    return runStartMin - leadMin;
  }

  /** Pieces that have come in free by a time, whatever has been taken. */
  long cameIn(String insert, long min) {
    long received =
        receipts.getOrDefault(insert, List.of()).stream()
            .filter(receipt -> receipt.usableMin() <= min)
            .mapToLong(Receipt::quantity)
            .sum();
    return lots.getOrDefault(insert, 0L) + received;
  }

  /** When the next receipt after a time may be used. */
  OptionalLong nextReceipt(String insert, long min) {
    return receipts.getOrDefault(insert, List.of()).stream()
        .mapToLong(Receipt::usableMin)
        .filter(usable -> usable > min)
        .min();
  }

  /** All takes by insert part. */
  Map<String, List<Draw>> draws() {
    return draws;
  }
}
