package pressweek.data.week;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.files.LotRow;
import pressweek.data.problem.LotStatus;

/**
 * What lies in lots that are reserved for an order: usable, and not expired before the horizon's
 * end.
 */
final class Reservations {
  private final Map<Key, Integer> pieces = new HashMap<>();

  private record Key(String insert, String order) {}

  Reservations(List<LotRow> lots, PlantClock clock) {
    for (LotRow lot : lots) {
      boolean lasts = lot.expires().map(when -> clock.minute(when) >= clock.endMin()).orElse(true);
      if (!lot.reservedFor().isEmpty() && lasts && lot.status() == LotStatus.USABLE) {
        pieces.merge(new Key(lot.what(), lot.reservedFor()), lot.onHand().count(), Integer::sum);
      }
    }
  }

  /**
   * Pieces of an insert that are reserved for an order line, or for its order and not yet claimed
   * by another line of it.
   */
  int available(String insert, String order, String lineId) {
    return pieces.getOrDefault(new Key(insert, lineId), 0)
        + pieces.getOrDefault(new Key(insert, order), 0);
  }

  /** Claims pieces, those of the line itself first. */
  void claim(String insert, String order, String lineId, int claimed) {
    Key own = new Key(insert, lineId);
    int fromOwn = Math.min(claimed, pieces.getOrDefault(own, 0));
    pieces.merge(own, -fromOwn, Integer::sum);
    pieces.merge(new Key(insert, order), fromOwn - claimed, Integer::sum);
  }
}
