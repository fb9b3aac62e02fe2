package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pressweek.data.plan.Pull;
import pressweek.data.problem.Stock;

/**
 * LOTS, second half: draws the pulls from the lots in the order of time and hands each insert part
 * to {@link LotDraw}.
 */
final class LotCheck {
  private LotCheck() {}

  static void check(Week week, Findings findings) {
    Stock stock = week.problem().materials().stock();
    if (!stock.checked()) {
      return;
    }
    Map<String, Stay> stays = new LinkedHashMap<>();
    week.stays().forEach(stay -> stays.putIfAbsent(stay.run().id(), stay));
    Map<String, TreeMap<Integer, List<Pull>>> pulls = new LinkedHashMap<>();
    for (Pull pull : week.plan().pulls()) {
      if (stays.containsKey(pull.run()) && pull.pieces() > 0) {
        pulls
            .computeIfAbsent(pull.insert(), insert -> new TreeMap<>())
            .computeIfAbsent(pull.needByMin(), min -> new ArrayList<>())
            .add(pull);
      }
    }
    long endMin = week.problem().plant().hours().endMin();
    Map<String, List<Source>> sources = new LinkedHashMap<>();
    stock
        .lots()
        .forEach(
            lot ->
                sources
                    .computeIfAbsent(lot.what(), insert -> new ArrayList<>())
                    .add(Source.of(lot, endMin)));
    stock
        .receipts()
        .forEach(
            receipt ->
                sources
                    .computeIfAbsent(receipt.what(), insert -> new ArrayList<>())
                    .add(Source.of(receipt)));
    pulls.forEach(
        (insert, byTime) -> {
          List<Source> ofInsert = sources.getOrDefault(insert, List.of());
          LotDraw draw = new LotDraw(insert, ofInsert, week.clock(), findings);
          byTime.values().forEach(together -> draw.draw(together, stays));
        });
  }
}
