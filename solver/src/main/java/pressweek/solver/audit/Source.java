package pressweek.solver.audit;

import java.util.Comparator;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Receipt;

/** A lot or a receipt and what is left of it as the pulls go by. */
final class Source {
  /**
   * The order in which free sources are used: lots by expiry, time received and number, then
   * receipts by the time they may be used.
   */
  static final Comparator<Source> FIRST_TO_USE =
      Comparator.comparingLong((Source source) -> source.usableMin)
          .thenComparingLong(source -> source.expiresMin)
          .thenComparingLong(source -> source.receivedMin)
          .thenComparing(source -> source.lot);

  private static final int NEVER = Integer.MAX_VALUE;

  private final String lot;
  private final String bin;
  private final String reservedFor;

  /** When a receipt may be used; {@link Long#MIN_VALUE} for a lot. */
  private final long usableMin;

  private final long expiresMin;
  private final long receivedMin;

  /** Why it may not be used; empty when it may. */
  private final String barred;

  private long left;

  private Source(Lot lot, String barred) {
    this.lot = lot.id();
    bin = lot.bin();
    reservedFor = lot.reservedFor();
    usableMin = Long.MIN_VALUE;
    expiresMin = lot.expiresMin().isPresent() ? lot.expiresMin().getAsInt() : Long.MAX_VALUE;
    receivedMin = lot.receivedMin();
    this.barred = barred;
    left = lot.onHand();
  }

  private Source(Receipt receipt) {
    lot = "";
    bin = "";
    reservedFor = "";
    usableMin = receipt.usableMin();
    expiresMin = Long.MAX_VALUE;
    receivedMin = 0;
    barred = "";
    left = receipt.quantity();
  }

  static Source of(Lot lot, long horizonEndMin) {
    String barred = "";
    if (lot.status() == LotStatus.HELD) {
      barred = "is held";
    } else if (!lot.reservedFor().isEmpty() && lot.expiresMin().orElse(NEVER) < horizonEndMin) {
      barred = "is reserved and expires before the horizon ends";
    }
    return new Source(lot, barred);
  }

  static Source of(Receipt receipt) {
    return new Source(receipt);
  }

  private boolean isLot() {
    return usableMin == Long.MIN_VALUE;
  }

  /** True for the lot, or a receipt of the time, that the pull names. */
  boolean isNamedBy(Pull pull) {
    return isLot()
        ? pull.lot().equals(lot) && pull.bin().equals(bin) && pull.receiptMin() == 0
        : pull.lot().isEmpty() && pull.bin().isEmpty() && pull.receiptMin() == usableMin;
  }

  long usableMin() {
    return usableMin;
  }

  /** True when no run that starts then may take it any more. */
  boolean hasExpired(long runStartMin) {
    return runStartMin >= expiresMin;
  }

  /** True when a run that starts then and needs it by that time may take it. */
  boolean serves(long needMin, long runStartMin) {
    return barred.isEmpty() && usableMin <= needMin && !hasExpired(runStartMin);
  }

  String barred() {
    return barred;
  }

  boolean isFree() {
    return reservedFor.isEmpty();
  }

  String reservedFor() {
    return reservedFor;
  }

  long left() {
    return left;
  }

  /** Takes pieces from it, as many as are left; returns how many. */
  long take(long pieces) {
    long taken = Math.max(0, Math.min(pieces, left));
    left -= taken;
    return taken;
  }

  String words(Clock clock) {
    return isLot() ? "lot " + lot : "the receipt of " + clock.text(usableMin);
  }
}
