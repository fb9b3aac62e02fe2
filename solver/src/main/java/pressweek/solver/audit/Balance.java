package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How much of something is there and how much of it is taken, minute by minute. */
final class Balance {
  /** Change of what is there and of what is taken, by minute. */
  private final TreeMap<Long, Amounts> steps = new TreeMap<>();

  private record Amounts(long there, long taken) {
    Amounts plus(Amounts other) {
      return new Amounts(there + other.there, taken + other.taken);
    }
  }

  /** A time in which too little is there. */
  record Shortage(Span span, long there, long taken) {}

  void add(Span span, long amount) {
    step(span, new Amounts(amount, 0), new Amounts(-amount, 0));
  }

  void take(Span span, long amount) {
    step(span, new Amounts(0, amount), new Amounts(0, -amount));
  }

  private void step(Span span, Amounts up, Amounts down) {
    if (!span.isEmpty()) {
      steps.merge(span.fromMin(), up, Amounts::plus);
      steps.merge(span.toMin(), down, Amounts::plus);
    }
  }

  /** All times, in order, at which less than the given amount is left. */
  List<Shortage> lessThan(long amount) {
    List<Shortage> shortages = new ArrayList<>();
    Amounts now = new Amounts(0, 0);
    long since = Long.MIN_VALUE;
    for (Map.Entry<Long, Amounts> step : steps.entrySet()) {
      if (now.there() - now.taken() < amount) {
        shortages.add(new Shortage(new Span(since, step.getKey()), now.there(), now.taken()));
      }
      now = now.plus(step.getValue());
      since = step.getKey();
    }
    if (amount > 0) {
      shortages.add(new Shortage(new Span(since, Long.MAX_VALUE), now.there(), now.taken()));
    }
    return shortages;
  }
}
