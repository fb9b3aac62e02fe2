package pressweek.solver.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pressweek.data.problem.Lot;
import pressweek.data.problem.LotStatus;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Receipt;

/**
 * Lots and receipts of a component in the order in which runs draw from them: lots by expiry, time
 * received and number, then receipts by the time from which they may be used. Held lots are not
 * there, nor reserved ones that expire before the horizon's end.
 */
public final class Shelf {
  /**
   * A lot or a receipt.
   *
   * @param lot lot; empty for a receipt
   * @param bin bin of the lot; empty for a receipt
   * @param usableMin when a receipt may be used; 0 for a lot
   * @param expiresMin first minute at which no run may start on it any more
   * @param reservedFor order or line; empty for free stock
   * @param pieces pieces, or grams
   */
  public record Source(
      String lot, String bin, int usableMin, int expiresMin, String reservedFor, int pieces) {}

  /**
   * What a run needs.
   *
   * @param who for whom it is reserved; empty for free stock
   * @param needMin when it must be at the press
   * @param startMin when the run starts
   * @param pieces pieces, or grams
   * @param traced true when one source is taken that suffices, where there is one
   */
  public record Need(String who, int needMin, int startMin, int pieces, boolean traced) {}

  /** Told of what is drawn. */
  public interface Drawn {
    /** So many pieces from the source at a place. */
    void from(int place, int pieces);
  }

  private static final int NEVER = Integer.MAX_VALUE;

  private final List<Source> sources;

  private Shelf(List<Source> sources) {
    this.sources = List.copyOf(sources);
  }

  /** The shelf of a component. */
  public static Shelf of(Problem problem, String what) {
    int end = problem.plant().hours().endMin();
    List<Source> sources = new ArrayList<>();
    problem.materials().stock().lots().stream()
        .filter(lot -> lot.what().equals(what) && lot.status() == LotStatus.USABLE)
        .filter(lot -> lot.reservedFor().isEmpty() || lot.expiresMin().orElse(NEVER) >= end)
        .sorted(
            Comparator.<Lot>comparingInt(lot -> lot.expiresMin().orElse(NEVER))
                .thenComparingInt(Lot::receivedMin)
                .thenComparing(Lot::id))
        .map(
            lot ->
                new Source(
                    lot.id(),
                    lot.bin(),
                    0,
                    lot.expiresMin().orElse(NEVER),
                    lot.reservedFor(),
                    lot.onHand()))
        .forEach(sources::add);
    problem.materials().stock().receipts().stream()
        .filter(receipt -> receipt.what().equals(what))
        .sorted(Comparator.comparingInt(Receipt::usableMin))
        .map(r -> new Source("", "", r.usableMin(), NEVER, "", r.quantity()))
        .forEach(sources::add);
    return new Shelf(sources);
  }

  /**
   * The shelf of the same component with receipts that come in later than expected.
   *
   * @param laterMin minutes by receipt of the stock; negative for sooner
   */
  public Shelf later(Problem problem, String what, int[] laterMin) {
    List<Source> moved = new ArrayList<>();
    sources.stream().filter(s -> s.usableMin() == 0).forEach(moved::add);
    int lots = moved.size();
    List<Receipt> receipts = problem.materials().stock().receipts();
    for (int i = 0; i < receipts.size(); i++) {
      Receipt r = receipts.get(i);
      if (r.what().equals(what)) {
        int usable = Math.max(1, r.usableMin() + laterMin[i]);
        moved.add(new Source("", "", usable, NEVER, "", r.quantity()));
      }
    }
    moved.subList(lots, moved.size()).sort(Comparator.comparingInt(Source::usableMin));
    return new Shelf(moved);
  }

  /** The sources in their order. */
  public List<Source> sources() {
    return sources;
  }

  /** What each source holds, in their order. */
  public int[] full() {
    return sources.stream().mapToInt(Source::pieces).toArray();
  }

  /**
   * Draws what a run needs and answers how much is missing.
   *
   * @param left what is left in each source; what is drawn is taken from it
   */
  public int draw(int[] left, Need need, Drawn drawn) {
    if (need.traced()) {
      for (int i = 0; i < left.length; i++) {
        if (need.pieces() > 0 && left[i] >= need.pieces() && serves(i, need)) {
          take(left, i, need.pieces(), drawn);
          return 0;
        }
      }
    }
    int missing = need.pieces();
    for (int i = 0; i < left.length && missing > 0; i++) {
      int most = Math.min(missing, left[i]);
      if (most > 0 && serves(i, need)) {
        take(left, i, most, drawn);
        missing -= most;
      }
    }
    return missing;
  }

  private static void take(int[] left, int place, int pieces, Drawn drawn) {
    left[place] -= pieces;
    drawn.from(place, pieces);
  }

  private boolean serves(int place, Need need) {
    Source source = sources.get(place);
    return source.usableMin() <= need.needMin()
        && need.startMin() < source.expiresMin()
        && source.reservedFor().equals(need.who());
  }
}
