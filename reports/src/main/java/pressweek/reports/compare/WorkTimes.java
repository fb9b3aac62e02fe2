package pressweek.reports.compare;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a press, or several, are planned to do, and the indicators of ISO 22400-2:2014 that follow
 * from it, by that standard's names. Times are in minutes. What a standard measures afterwards is
 * here what the plan foresees: there is no unplanned delay (ADET is 0), and pieces are those that
 * the plan makes and scraps.
 *
 * @param busyMin planned busy time, PBT: the time in which presses are to work
 * @param setupMin actual unit setup time, AUST: changes and dismounts
 * @param productionMin actual production time, APT: runs with their start-up shots
 * @param plannedRunMin planned run time per item times pieces made, PRI x PQ, at the cycle of each
 *     run
 * @param goodRunMin planned run time per item times good pieces, PRI x GQ
 */
public record WorkTimes(
    double busyMin,
    double setupMin,
    double productionMin,
    double plannedRunMin,
    double goodRunMin) {
  private static final WorkTimes NONE = new WorkTimes(0, 0, 0, 0, 0);

  /** The sum over several presses or runs. */
  public static WorkTimes sum(List<WorkTimes> all) {
    return all.stream().reduce(NONE, WorkTimes::plus);
  }

  private WorkTimes plus(WorkTimes other) {
    return new WorkTimes(
        busyMin + other.busyMin,
        setupMin + other.setupMin,
        productionMin + other.productionMin,
        plannedRunMin + other.plannedRunMin,
        goodRunMin + other.goodRunMin);
  }

  /** Actual unit processing time, AUPT: production and setup. */
  public double processingMin() {
    return productionMin + setupMin;
  }

  /** Availability: APT / PBT. */
  public OptionalDouble availability() {
    return ratio(productionMin, busyMin);
  }

  /** Effectiveness: PRI x PQ / APT. */
  public OptionalDouble effectiveness() {
    return ratio(plannedRunMin, productionMin);
  }

  /** Quality ratio, GQ / PQ; pieces of different items are weighed by their run time. */
  public OptionalDouble quality() {
    return ratio(goodRunMin, plannedRunMin);
  }

  /** Overall equipment effectiveness index: availability x effectiveness x quality ratio. */
  public OptionalDouble oee() {
    return product(availability(), effectiveness(), quality());
  }

  /** Net equipment effectiveness index: AUPT / PBT x effectiveness x quality ratio. */
  public OptionalDouble nee() {
    return product(allocation(), effectiveness(), quality());
  }

  /** Setup ratio: AUST / AUPT. */
  public OptionalDouble setupRatio() {
    return ratio(setupMin, processingMin());
  }

  /** Allocation efficiency: AUBT / PBT, where AUBT is AUPT since no delay is planned. */
  public OptionalDouble allocation() {
    return ratio(processingMin(), busyMin);
  }

  private static OptionalDouble ratio(double part, double whole) {
    return whole > 0 ? OptionalDouble.of(part / whole) : OptionalDouble.empty();
  }

  private static OptionalDouble product(OptionalDouble... factors) {
    double product = 1;
    for (OptionalDouble factor : factors) {
      if (factor.isEmpty()) {
        return OptionalDouble.empty();
      }
      product *= factor.getAsDouble();
    }
    return OptionalDouble.of(product);
  }
}
