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
  private final Map<String, String> wholes = new HashMap<>();
  private final Map<Key, String> holders = new HashMap<>();

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
    return pieces.getOrDefault(own(insert, lineId), 0)
        + pieces.getOrDefault(new Key(insert, order), 0);
  }

  /** Says that a line is made in parts: the first part that takes a component has what is its. */
  void parts(String lineId, List<String> partIds) {
    partIds.forEach(part -> wholes.put(part, lineId));
  }

  /** True when lots are reserved for the line or its order. */
  boolean any(String order, String lineId) {
    return pieces.keySet().stream()
        .anyMatch(key -> key.order().equals(order) || key.order().equals(lineId));
  }

  /** Whom a lot serves that is reserved for an order or a line: the part of it that takes it. */
  String holder(String insert, String reservedFor) {
    return holders.getOrDefault(new Key(insert, reservedFor), reservedFor);
  }

  /** What is reserved for the line itself; a part has that of its line when no other part does. */
  private Key own(String insert, String lineId) {
    Key whole = new Key(insert, wholes.getOrDefault(lineId, lineId));
    boolean free = holders.getOrDefault(whole, lineId).equals(lineId);
    return pieces.containsKey(whole) && free ? whole : new Key(insert, lineId);
  }

  /** Claims pieces, those of the line itself first. */
  void claim(String insert, String order, String lineId, int claimed) {
    Key own = own(insert, lineId);
    int fromOwn = Math.min(claimed, pieces.getOrDefault(own, 0));
    pieces.merge(own, -fromOwn, Integer::sum);
    if (fromOwn > 0 && !own.order().equals(lineId)) {
      holders.put(own, lineId);
    }
    pieces.merge(new Key(insert, order), fromOwn - claimed, Integer::sum);
  }
}
