package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import java.util.function.Predicate;
import pressweek.data.problem.Option;

/** What keeps a running job from going on. */
final class Hindrances {
  private final Spans working;
  private final Spans hours;
  private final long minutes;
  private final List<Balance.Shortage> operators;
  private final List<MoldAway> away;
  private final LongFunction<OptionalLong> components;

  private Hindrances(PressWalk walk, Option option, long minutes, Week week, Others others) {
    working = walk.time().working();
    hours = walk.time().hours(week.ids().handLoad(option.mold()));
    this.minutes = minutes;
    long need = option.pace().operatorThousandths();
    operators =
        week.problem().plant().crew().operatorsChecked() && need > 0
            ? OperatorCheck.balance(week, others.crew()).lessThan(need)
            : List.of();
    away = MoldAway.byMold(week.problem()).getOrDefault(option.mold(), List.of());
    components = others.components();
  }

  /**
   * What else there is beside a job.
   *
   * @param crew whose operators count
   * @param components when to try again because components are not there for a start; empty when
   *     they are
   */
  private record Others(Predicate<Stay> crew, LongFunction<OptionalLong> components) {}

  /** What keeps a run, given all other runs of the plan. */
  static Hindrances of(PressWalk walk, Stay stay, Week week) {
    StockBook stock = new StockBook(week);
    Others others =
        new Others(other -> other != stay, start -> componentsThere(stay, stock, start));
    return new Hindrances(walk, stay.option(), stay.minutes(), week, others);
  }

  /** What keeps a job that the plan leaves out, given what else is running. */
  static Hindrances ofLeftOut(PressWalk walk, Option option, Week week) {
    StockBook stock = new StockBook(week);
    Others others = new Others(Stay::running, start -> comesIn(option, stock, start));
    return new Hindrances(walk, option, option.pace().runMin(), week, others);
  }

  /**
   * The first working minute between two times at which nothing keeps the job from starting; empty
   * when there is none.
   */
  OptionalLong firstStart(long from, long before) {
    OptionalLong start = working.next(from);
    while (start.isPresent() && start.getAsLong() < before) {
      OptionalLong end = hours.end(start.getAsLong(), minutes);
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
    return components.apply(run.fromMin());
  }

  private static OptionalLong componentsThere(Stay stay, StockBook stock, long start) {
    for (Map.Entry<String, List<StockBook.Draw>> entry : stock.draws().entrySet()) {
      List<StockBook.Draw> moved = new ArrayList<>();
      boolean takes = false;
      for (StockBook.Draw draw : entry.getValue()) {
        boolean own = draw.stay().equals(stay);
        takes |= own && draw.pieces() > 0;
        moved.add(own ? draw.at(start) : draw);
      }
      if (takes && isShort(stock, entry.getKey(), moved)) {
        return nextReceipt(stock, entry.getKey(), start);
      }
    }
    return OptionalLong.empty();
  }

  /** True when a running job would find too little. */
  private static boolean isShort(StockBook stock, String what, List<StockBook.Draw> draws) {
    return stock.shortages(what, draws).stream()
        .anyMatch(shortage -> shortage.draw().stay().running());
  }

  private static OptionalLong comesIn(Option option, StockBook stock, long start) {
    long needMin = stock.needMin(start);
    return option.making().takes().stream()
        .filter(stock::counts)
        .filter(take -> stock.leftByRunning(take.insert(), needMin) < take.pieces())
        .map(take -> nextReceipt(stock, take.insert(), start))
        .findFirst()
        .orElse(OptionalLong.empty());
  }

  private static OptionalLong nextReceipt(StockBook stock, String what, long start) {
    long needMin = stock.needMin(start);
    OptionalLong next = stock.nextReceipt(what, needMin);
    return OptionalLong.of(next.isPresent() ? next.getAsLong() + start - needMin : Long.MAX_VALUE);
  }
}
