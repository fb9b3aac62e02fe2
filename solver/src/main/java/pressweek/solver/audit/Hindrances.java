package pressweek.solver.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import pressweek.data.problem.Take;

/** What keeps a running job from going on, given all other runs of the plan. */
final class Hindrances {
  private final Stay stay;
  private final Spans working;
  private final List<Balance.Shortage> operators;
  private final List<MoldAway> away;
  private final InsertStock stock;
  private final boolean stockChecked;

  Hindrances(PressWalk walk, Stay stay, Week week) {
    this.stay = stay;
    working = walk.time().working();
    long need = OperatorCheck.thousandths(stay);
    operators =
        week.problem().plant().crew().operatorsChecked() && need > 0
            ? OperatorCheck.balance(week, other -> other != stay).lessThan(need)
            : List.of();
    away = MoldAway.byMold(week.problem()).getOrDefault(stay.option().mold(), List.of());
    stock = new InsertStock(week);
    stockChecked = week.problem().materials().stock().checked();
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
    return stockChecked ? insertsThere(run.fromMin()) : OptionalLong.empty();
  }

  private OptionalLong insertsThere(long start) {
    Map<String, Long> needs = new HashMap<>();
    for (Take take : stay.option().making().takes()) {
      needs.merge(take.insert(), stay.freePieces(take), Long::sum);
    }
    long needMin = stock.needMin(start);
    for (Map.Entry<String, Long> need : needs.entrySet()) {
      String insert = need.getKey();
      long taken =
          stock.draws().getOrDefault(insert, List.of()).stream()
              .filter(draw -> !draw.stay().equals(stay) && draw.needMin() <= needMin)
              .mapToLong(InsertStock.Draw::pieces)
              .sum();
      if (stock.cameIn(insert, needMin) - taken < need.getValue()) {
        long next = stock.nextReceipt(insert, needMin).orElse(Long.MAX_VALUE);
        return OptionalLong.of(next == Long.MAX_VALUE ? next : next + start - needMin);
      }
    }
    return OptionalLong.empty();
  }
}
