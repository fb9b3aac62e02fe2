package pressweek.solver.audit;

import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Rule;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Shipping;
import pressweek.data.problem.Terms;

/**
 * What runs, dismounts and unplaced lines cost by section "Charges" of docs/rules.md, thousandths
 * of a cent.
 */
final class Ledger {
  private static final long DAY_MIN = 24 * 60;

  private final Week week;
  private final Rates rates;
  private final long[] cutOffs;

  Ledger(Week week) {
    this.week = week;
    rates = week.problem().plant().rates();
    cutOffs = cutOffs(week);
  }

  /** Shipping cut-offs from the first due time to the last time at which anything is ready. */
  private static long[] cutOffs(Week week) {
    Shipping shipping = week.problem().plant().shipping();
    long first = Long.MAX_VALUE;
    for (Job job : week.problem().jobs()) {
      first = Math.min(first, job.deadline().dueMin());
    }
    long last = week.problem().plant().hours().endMin();
    for (Stay stay : week.stays()) {
      last = Math.max(last, stay.readyMin());
    }
    last = Math.min(last, Week.lastMin(week.problem().plant().hours()));
    List<Long> times = new ArrayList<>();
    if (first < last) {
      LocalDate end = week.clock().day(last);
      for (LocalDate day = week.clock().day(first); !day.isAfter(end); day = day.plusDays(1)) {
        if (shipping.days().contains(day.getDayOfWeek())) {
          times.add(week.clock().minute(day, shipping.cutOff()));
        }
      }
    }
    return times.stream().mapToLong(Long::longValue).toArray();
  }

  /** What a run is charged, by rule; a rule that charges nothing is absent. */
  Map<Rule, Long> charges(Stay stay, Press press) {
    Map<Rule, Long> charges = new EnumMap<>(Rule.class);
    DueChange due = stay.due();
    long price =
        week.ids()
            .resin(stay.job().resin())
            .map(Resin::pricePerKg)
            .filter(p -> p > 0)
            .orElse(rates.purgeKg());
    long startupG = due.exchanges() ? stay.option().making().startupGrams() : 0;
    long runMin = stay.option().pace().runMin();
    boolean otherWork = press.food() == FoodUse.KEPT && !stay.job().foodGrade();
    charges.put(Rule.LATE, weighted(stay.job(), lateness(stay.job(), stay.readyMin())));
    charges.put(Rule.CHANGE, change(due.minutes()));
    charges.put(Rule.PURGE, share(price, due.purgeG(), 1000));
    charges.put(Rule.START_UP, share(price, startupG, 1000));
    charges.put(Rule.PRESS_RATE, pressRate(stay));
    charges.put(Rule.MOVED, moved(stay));
    charges.put(Rule.KEPT_PRESS, otherWork ? share(rates.keptPressHour(), runMin, 60) : 0L);
    charges.values().removeIf(amount -> amount == 0);
    return charges;
  }

  /** What an order line costs that found no place. */
  long unplaced(Job job) {
    long horizonEnd = week.problem().plant().hours().endMin();
    return weighted(job, rates.unplaced() + lateness(job, horizonEnd));
  }

  /** What minutes of change or dismount cost. */
  long change(long minutes) {
    return share(rates.changeHour(), minutes, 60);
  }

  private long moved(Stay stay) {
    Terms terms = week.problem().arranged().terms();
    long tolerance = week.problem().plant().moveToleranceMin();
    return terms.earlier().stream()
        .filter(place -> place.job().equals(stay.job().id()))
        .limit(1)
        .filter(
            place ->
                !place.press().equals(stay.run().press())
                    || Math.abs((long) stay.run().startMin() - place.startMin()) > tolerance)
        .mapToLong(place -> terms.movedRun())
        .sum();
  }

  private long lateness(Job job, long readyMin) {
    long due = Math.max(job.deadline().dueMin(), week.problem().plant().hours().startMin());
    if (readyMin <= due) {
      return 0;
    }
    return share(rates.lateStep(), missed(due, readyMin), 1)
        + share(rates.lateDay(), readyMin - due, DAY_MIN);
  }

  /** Cut-offs at or after a time and before the ready time. */
  private int missed(long due, long ready) {
    return before(ready) - before(due);
  }

  /** Cut-offs before a time. */
  private int before(long min) {
    int found = Arrays.binarySearch(cutOffs, min);
    return found >= 0 ? found : -found - 1;
  }

  private static long weighted(Job job, long amount) {
    return share(amount, job.deadline().weightHundredths(), 100);
  }

  private long pressRate(Stay stay) {
    long least = stay.job().options().stream().mapToLong(this::rate).min().orElse(0);
    return rate(stay.option()) - least;
  }

  private long rate(Option option) {
    long perHour = week.ids().press(option.press()).map(Press::ratePerHour).orElse(0L);
    return share(perHour, option.pace().runMin(), 60);
  }

  /** {@code amount x times / divisor}, rounded down. */
  static long share(long amount, long times, long divisor) {
    BigInteger[] parts =
        BigInteger.valueOf(amount)
            .multiply(BigInteger.valueOf(times))
            .divideAndRemainder(BigInteger.valueOf(divisor));
    BigInteger down = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    return down.bitLength() < Long.SIZE ? down.longValue() : Long.MAX_VALUE;
  }
}
