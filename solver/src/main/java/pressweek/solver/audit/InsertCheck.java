package pressweek.solver.audit;

import java.util.Comparator;
import java.util.List;
import pressweek.data.plan.Rule;

/** INSERTS: what runs take of an insert part has come in before they need it. */
final class InsertCheck {
  private InsertCheck() {}

  static void check(Week week, Findings findings) {
    if (week.problem().materials().stock().checked()) {
      InsertStock stock = new InsertStock(week);
      stock.draws().forEach((insert, draws) -> check(insert, draws, stock, week.clock(), findings));
    }
  }

  private static void check(
      String insert,
      List<InsertStock.Draw> draws,
      InsertStock stock,
      Clock clock,
      Findings findings) {
    List<InsertStock.Draw> inOrder =
        draws.stream()
            .filter(draw -> draw.pieces() > 0)
            .sorted(Comparator.comparingLong(InsertStock.Draw::needMin))
            .toList();
    long taken = 0;
    for (InsertStock.Draw draw : inOrder) {
      long left = stock.cameIn(insert, draw.needMin()) - taken;
      if (left < draw.pieces()) {
        findings.add(
            Rule.INSERTS,
            draw.stay().run(),
            "needs %d of insert %s by %s, only %d are free then"
                .formatted(draw.pieces(), insert, clock.text(draw.needMin()), Math.max(0, left)));
      }
      // What was not there is counted once, not against every later run again.
      taken += Math.min(draw.pieces(), Math.max(0, left));
    }
  }
}
