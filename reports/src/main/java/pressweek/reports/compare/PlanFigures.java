package pressweek.reports.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.reports.schedule.PlanBook;

/**
 * What a plan amounts to, as scenarios are compared by. {@code docs/figures.md} defines each figure
 * with a worked example.
 *
 * @param delivery lines and lateness
 * @param changing changes and purge
 * @param times planned times and the indicators of ISO 22400-2
 * @param people hours of people
 * @param flow what runs short, campaigns, moves
 * @param loads presses, presses by day, shifts
 * @param cost avoidable cost by rule, thousandths of a cent; a rule without charge is absent
 */
public record PlanFigures(
    Delivery delivery,
    Changing changing,
    WorkTimes times,
    People people,
    Flow flow,
    LoadTables loads,
    Map<Rule, Long> cost) {
  public PlanFigures {
    cost = Map.copyOf(cost);
  }

  /** The figures of a plan. */
  public static PlanFigures of(PlanBook book) {
    return of(book, Optional.empty());
  }

  /**
   * The figures of a plan.
   *
   * @param promised the plan that the floor has been promised, against which moves are counted
   */
  public static PlanFigures of(PlanBook book, Optional<Plan> promised) {
    return new FigureReport(book, promised).figures();
  }

  /** Avoidable cost, thousandths of a cent. */
  public long avoidableCost() {
    return cost.values().stream().mapToLong(Long::longValue).sum();
  }

  /**
   * Lines and lateness.
   *
   * @param lines order lines, those that could not be planned as well
   * @param placed lines in the plan
   * @param onTime lines that are ready when they are due (promised), or before
   * @param onRequest lines that are ready when the customer asked for them, or before
   * @param weight weight of the lines that could be planned, hundredths
   * @param weightOnTime weight of those that are on time
   * @param weightOnRequest weight of those that are ready by the requested time
   * @param lateMin minutes late against the due times, over all lines in the plan
   */
  public record Delivery(
      int lines,
      int placed,
      int onTime,
      int onRequest,
      long weight,
      long weightOnTime,
      long weightOnRequest,
      long lateMin) {}

  /**
   * Changes and purge.
   *
   * @param count changes and dismounts
   * @param minutes their minutes
   * @param countByKind changes by what they exchange first, in the order mold, tooling set, resin,
   *     colour, food clearance; dismounts are not in it
   * @param minutesByKind their minutes likewise
   * @param dismounts molds taken off for another press
   * @param dismountMin their minutes
   * @param purgeG grams purged
   */
  public record Changing(
      int count,
      long minutes,
      Map<ChangeKind, Integer> countByKind,
      Map<ChangeKind, Long> minutesByKind,
      int dismounts,
      long dismountMin,
      long purgeG) {
    public Changing {
      countByKind = Map.copyOf(countByKind);
      minutesByKind = Map.copyOf(minutesByKind);
    }
  }

  /**
   * Hours of people.
   *
   * @param operatorMin minutes of operators that runs need, thousandths of people counted in
   * @param setterMin minutes of setters that changes and dismounts take
   * @param overtimeShifts overtime shifts that are opened
   * @param overtimeMin their minutes, breaks counted in
   */
  public record People(long operatorMin, long setterMin, int overtimeShifts, long overtimeMin) {}

  /**
   * What runs short, campaigns, and moves.
   *
   * @param shortages components for which a run waits or for want of which a line is unplaced
   * @param campaigns rows of runs of one mold on one press
   * @param campaignMin run minutes of all campaigns
   * @param longestMin run minutes of the longest
   * @param moved runs that are not where the promised plan had them; empty when none was named
   */
  public record Flow(
      int shortages, int campaigns, long campaignMin, long longestMin, Optional<Integer> moved) {}

  /**
   * How far time is used.
   *
   * @param presses presses
   * @param days presses by day
   * @param shifts shifts over their presses
   */
  public record LoadTables(List<Load> presses, List<Load> days, List<Load> shifts) {
    public LoadTables {
      presses = List.copyOf(presses);
      days = List.copyOf(days);
      shifts = List.copyOf(shifts);
    }
  }
}
