package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** What keeps a running job from going on, given all other runs of the plan. */
final class Hindrances {
  private final Stay stay;
  private final Spans working;
  private final List<Balance.Shortage> operators;
  private final List<MoldAway> away;
  private final StockBook stock;

  Hindrances(PressWalk walk, Stay stay, Week week) {
    this.stay = stay;
    working = walk.time().working();
    long need = OperatorCheck.thousandths(stay);
    operators =
        week.problem().plant().crew().operatorsChecked() && need > 0
            ? OperatorCheck.balance(week, other -> other != stay).lessThan(need)
            : List.of();
    away = MoldAway.byMold(week.problem()).getOrDefault(stay.option().mold(), List.of());
    stock = new StockBook(week);
  }

  /**
   * The first working minute between two times at which nothing keeps the job from starting; empty
   * when there is none.
   */
  OptionalLong firstStart(long from, long before) {
    OptionalLong start = working.next(from);
    while (start.isPresent() && start.getAsLong() < before) {
      OptionalLong end = working.end(start.getAsLong(), stay.minutes());
      if (end.isEmpty()) {
        return OptionalLong.empty();
      }
      OptionalLong clear = clear(new Span(start.getAsLong(), end.getAsLong()));
      if (clear.isEmpty()) {
        return start;
      }
      start = working.next(clear.getAsLong());
    }
    return OptionalLong.empty();
  }

  /** When the first hindrance of a run in this span is over; empty when nothing hinders it. */
  private OptionalLong clear(Span run) {
    for (MoldAway time : away) {
      if (time.span().overlaps(run)) {
        return OptionalLong.of(time.span().toMin());
      }
    }
    for (Balance.Shortage shortage : operators) {
      if (working.minutes(shortage.span().and(run)) > 0) {
        return OptionalLong.of(shortage.span().toMin());
      }
    }
    return componentsThere(run.fromMin());
  }

  private OptionalLong componentsThere(long start) {
    for (Map.Entry<String, List<StockBook.Draw>> entry : stock.draws().entrySet()) {
      List<StockBook.Draw> moved = new ArrayList<>();
      boolean takes = false;
      for (StockBook.Draw draw : entry.getValue()) {
        boolean own = draw.stay().equals(stay);
        takes |= own && draw.pieces() > 0;
        moved.add(own ? draw.at(start) : draw);
      }
      if (takes && isShort(entry.getKey(), moved)) {
        long needMin = stock.needMin(start);
        long next = stock.nextReceipt(entry.getKey(), needMin).orElse(Long.MAX_VALUE);
        return OptionalLong.of(next == Long.MAX_VALUE ? next : next + start - needMin);
      }
    }
    return OptionalLong.empty();
  }

  private boolean isShort(String what, List<StockBook.Draw> draws) {
    return stock.shortages(what, draws).stream()
        .anyMatch(shortage -> shortage.draw().stay().equals(stay));
  }
}
