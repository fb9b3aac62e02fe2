package pressweek.solver.rules;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Resin;

/**
 * What each cost rule charges, in thousandths of a cent, rounded down; one method a rule, named
 * like it.
 */
public final class Charges {
  private static final int DAY = 1440;

  private final Rates rates;
  private final long closeHour;
  private final int[] due;
  private final int[] weight;
  private final int[] cutOffs;
  private final long[] price;
  private final int start;
  private final int horizonEnd;
  private final Map<String, Press> presses = new HashMap<>();

  public Charges(Problem problem, Names names) {
    rates = problem.plant().rates();
    closeHour = problem.arranged().terms().closeHour();
    List<Job> jobs = problem.jobs();
    due = jobs.stream().mapToInt(j -> j.deadline().dueMin()).toArray();
    weight = jobs.stream().mapToInt(j -> j.deadline().weightHundredths()).toArray();
    start = problem.plant().hours().startMin();
    horizonEnd = problem.plant().hours().endMin();
    cutOffs = cutOffs(problem);
    price = new long[names.materials().size()];
    Map<String, Resin> resins = new HashMap<>();
    problem.materials().resins().forEach(r -> resins.put(r.id(), r));
    int i = 0;
    for (Names.Material material : names.materials()) {
      Resin resin = resins.get(material.resin());
      price[i++] = resin == null || resin.pricePerKg() == 0 ? rates.purgeKg() : resin.pricePerKg();
    }
    problem.floor().presses().forEach(p -> presses.put(p.id(), p));
  }

  /** Shipping cut-offs from the first due time to well after anything can be ready. */
  private static int[] cutOffs(Problem problem) {
    ZoneId zone = problem.plant().hours().zone();
    int begin = problem.plant().hours().startMin();
    int end = problem.plant().hours().endMin();
    int first = problem.jobs().stream().mapToInt(j -> j.deadline().dueMin()).min().orElse(begin);
    int after = problem.jobs().stream().mapToInt(j -> j.deadline().afterMin()).max().orElse(0);
    LocalDate date = date(Math.min(first, begin), zone).minusDays(1);
    LocalDate last = date(end + after, zone).plusDays(460);
    int[] found = new int[0];
    int n = 0;
    for (; !date.isAfter(last); date = date.plusDays(1)) {
      if (problem.plant().shipping().days().contains(date.getDayOfWeek())) {
        found = n == found.length ? Arrays.copyOf(found, n * 2 + 64) : found;
        long second = date.atTime(problem.plant().shipping().cutOff()).atZone(zone).toEpochSecond();
        found[n++] = Math.toIntExact(Math.floorDiv(second, 60));
      }
    }
    return Arrays.copyOf(found, n);
  }

  private static LocalDate date(int minute, ZoneId zone) {
    return Instant.ofEpochSecond(minute * 60L).atZone(zone).toLocalDate();
  }

  /**
   * Shipping cut-offs at or after the due time of a job and before it is ready, those not counted
   * that had passed when the plan starts.
   */
  public int cutOffsMissed(int job, int ready) {
    int from = Math.max(due[job], start);
    return ready <= from ? 0 : firstAtOrAfter(ready) - firstAtOrAfter(from);
  }

  /** Shipping cut-offs before a time, counted from one that nobody asks about. */
  public int cutOffsBefore(int time) {
    return firstAtOrAfter(time);
  }

  private int firstAtOrAfter(int time) {
    int i = Arrays.binarySearch(cutOffs, time);
    return i < 0 ? -i - 1 : i;
  }

  /** LATE. What was late already when the plan starts is not charged: no plan could avoid it. */
  public long late(int job, int ready) {
    return lateness(job, ready) * weight[job] / 100;
  }

  /** The most by which LATE of a job can fall when it is ready so many minutes earlier. */
  public long lateGain(int job, int minutes) {
    long steps = rates.lateStep() == 0 ? 0 : rates.lateStep() * (1 + minutes / DAY);
    return (steps + rates.lateDay() * minutes / DAY + 1) * weight[job] / 100;
  }

  private long lateness(int job, int ready) {
    int minutes = ready - Math.max(due[job], start);
    if (minutes <= 0) {
      return 0;
    }
    long steps = rates.lateStep() == 0 ? 0 : rates.lateStep() * cutOffsMissed(job, ready);
    return steps + rates.lateDay() * minutes / DAY;
  }

  /** UNPLACED. */
  public long unplaced(int job) {
    return (rates.unplaced() + lateness(job, horizonEnd)) * weight[job] / 100;
  }

  /** CHANGE, also for a dismount. */
  public long change(int minutes) {
    return rates.changeHour() * minutes / 60;
  }

  /** PURGE, of the incoming material. */
  public long purge(int material, int grams) {
    return price[material] * grams / 1000;
  }

  /** START_UP, of the incoming material. */
  public long startUp(int material, int grams) {
    return price[material] * grams / 1000;
  }

  /** PRESS_RATE. */
  public long pressRate(Job job, Option option) {
    long least = job.options().stream().mapToLong(this::running).min().orElse(0);
    return running(option) - least;
  }

  private long running(Option option) {
    Press press = presses.get(option.press());
    return press == null ? 0 : press.ratePerHour() * option.pace().runMin() / 60;
  }

  /** OVERTIME of a shift of so many minutes. */
  public long overtime(long perHour, int minutes) {
    return perHour * minutes / 60;
  }

  /** CLOSE, of the end of the last run. */
  public long close(int lastEnd) {
    return closeHour * Math.max(0, lastEnd - start) / 60;
  }

  /** KEPT_PRESS. */
  public long keptPress(Press press, Job job, Option option) {
    boolean kept = press.food() == FoodUse.KEPT && !job.foodGrade();
    return kept ? rates.keptPressHour() * option.pace().runMin() / 60 : 0;
  }
}
