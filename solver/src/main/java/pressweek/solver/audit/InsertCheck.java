package pressweek.solver.audit;

import pressweek.data.plan.Rule;

/** INSERTS: what runs take of inserts and other components has come in before they need it. */
final class InsertCheck {
  private InsertCheck() {}

  static void check(Week week, Findings findings) {
    StockBook book = new StockBook(week);
    book.draws()
        .forEach(
            (what, draws) ->
                book.shortages(what, draws)
                    .forEach(shortage -> tell(what, shortage, week.clock(), findings)));
  }

  private static void tell(
      String what, StockBook.Shortage shortage, Clock clock, Findings findings) {
    StockBook.Draw draw = shortage.draw();
    findings.add(
        Rule.INSERTS,
        draw.stay().run(),
        "needs %d of %s %s by %s, only %d are free then"
            .formatted(
                draw.pieces(),
                draw.component().word(),
                what,
                clock.text(draw.needMin()),
                shortage.free()));
  }
}
