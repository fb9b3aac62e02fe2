package pressweek.data.week;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import pressweek.data.files.OrderRow;
import pressweek.data.files.StockRow;

/**
 * Finished stock netted against order lines: pieces reserved for an order serve it alone, free
 * pieces serve the lines of the item by due time. A line on hold gets no free pieces.
 */
final class FinishedStock {
  private final UnaryOperator<String> itemKey;
  private final Map<String, Integer> free = new HashMap<>();
  private final Map<Reserved, Integer> reserved = new HashMap<>();

  private record Reserved(String item, String order) {}

  FinishedStock(List<StockRow> rows, UnaryOperator<String> itemKey) {
    this.itemKey = itemKey;
    for (StockRow row : rows) {
      String item = itemKey.apply(row.item());
      if (row.reservedFor().isEmpty()) {
        free.merge(item, row.onHand(), Integer::sum);
      } else {
        reserved.merge(new Reserved(item, row.reservedFor()), row.onHand(), Integer::sum);
      }
    }
  }

  /**
   * What each line still needs, by {@code order/line}.
   *
   * @param made good pieces of runs in progress, by line
   */
  Map<String, Netted> net(List<OrderRow> orders, Map<String, Integer> made, PlantClock clock) {
    Map<String, Netted> netted = new HashMap<>();
    orders.stream()
        .sorted(Comparator.comparingInt(order -> clock.due(order.due())))
        .forEach(order -> netted.put(order.id(), net(order, made.getOrDefault(order.id(), 0))));
    return netted;
  }

  private Netted net(OrderRow order, int made) {
    String item = itemKey.apply(order.item());
    int open = Math.max(0, order.quantity() - made);
    int own = take(reserved, new Reserved(item, order.id()), open);
    own += take(reserved, new Reserved(item, order.order()), open - own);
    int shared = order.hold().isEmpty() ? take(free, item, open - own) : 0;
    int needed = open - own - shared;
    int mayMiss = (int) Math.floor(order.quantity() * order.underPct() / 100);
    boolean enough = needed < order.quantity() && needed <= mayMiss;
    return new Netted(own + shared, made, enough ? 0 : needed);
  }

  /** Takes cores of an order line's item from what is left when all lines have theirs. */
  int cores(OrderRow core, int most) {
    String item = itemKey.apply(core.item());
    int own = take(reserved, new Reserved(item, core.order()), most);
    return own + take(free, item, most - own);
  }

  private static <K> int take(Map<K, Integer> stock, K key, int most) {
    int taken = Math.min(most, stock.getOrDefault(key, 0));
    stock.merge(key, -taken, Integer::sum);
    return taken;
  }
}
