package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pressweek.data.plan.Pull;

/**
 * LOTS, second half: draws the pulls from the lots in the order of time and hands each insert part
 * to {@link LotDraw}.
 */
final class LotCheck {
  private LotCheck() {}

  static void check(Week week, Findings findings) {
    StockBook book = new StockBook(week);
    Map<String, Stay> stays = new LinkedHashMap<>();
    week.stays().forEach(stay -> stays.putIfAbsent(stay.run().id(), stay));
    Map<String, TreeMap<Integer, List<Pull>>> pulls = new LinkedHashMap<>();
    for (Pull pull : week.plan().pulls()) {
      Stay stay = stays.get(pull.run());
      if (stay != null && pull.pieces() > 0 && stay.counts(pull.insert(), book)) {
        pulls
            .computeIfAbsent(pull.insert(), insert -> new TreeMap<>())
            .computeIfAbsent(pull.needByMin(), min -> new ArrayList<>())
            .add(pull);
      }
    }
    pulls.forEach(
        (what, byTime) -> {
          LotDraw draw = new LotDraw(what, book.sources(what), week.clock(), findings);
          byTime.values().forEach(together -> draw.draw(together, stays));
        });
  }
}
