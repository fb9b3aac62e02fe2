package pressweek.data.molding;

import java.util.OptionalDouble;

/**
 * Drying a resin before it is molded: hours and the hopper that holds so much. Always an estimate;
 * the resin sheet rules, and moisture is measured, not computed.
 */
public final class Drying {
  private Drying() {}

  /**
   * Hours from filling the hopper to the first shot. Only time at temperature counts, so that a
   * cold hopper needs more ("Tip: drying residence time", a dryer maker's newsletter: 5 hours
   * instead of 4).
   *
   * @param dryH hours at temperature
   * @param coldStartH further hours until a cold hopper is at temperature
   */
  public static double hoursBeforeFirstShot(double dryH, double coldStartH, boolean cold) {
    return dryH + (cold ? coldStartH : 0);
  }

  /** Kilograms an hour that a run takes from its hopper; empty when the cycle is not above 0. */
  public static OptionalDouble rateKgH(double shotG, double cycleS) {
    return cycleS > 0 ? OptionalDouble.of(shotG * 3.6 / cycleS) : OptionalDouble.empty();
  }

  /** Kilograms in the hopper so that each stays its hours in it. */
  public static double hopperKg(double rateKgH, double dryH) {
    return rateKgH * dryH;
  }

  /** Litres of so many kilograms of granules; empty when the bulk density is not above 0. */
  public static OptionalDouble litres(double kg, double bulkKgL) {
    return bulkKgL > 0 ? OptionalDouble.of(kg / bulkKgL) : OptionalDouble.empty();
  }

  /** Kilograms of granules that a hopper holds. */
  public static double massKg(double hopperL, double bulkKgL) {
    return hopperL * bulkKgL;
  }
}
