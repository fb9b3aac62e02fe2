package pressweek.data.molding;

import java.util.OptionalDouble;

/**
 * The plastic of one shot and the barrel that it comes from.
 *
 * <p>Barrels are rated in polystyrene, so that another resin is converted by density (Bozzelli, "A
 * simpler way to calculate shot size vs barrel capacity", Plastics Technology: 20 to 65 % of the
 * barrel is usual).
 */
public final class Shot {
  /** One US fluid ounce, cm3. */
  public static final double FLUID_OUNCE_CM3 = 29.5735;

  private Shot() {}

  /** Grams of plastic in a shot; inserts are no plastic. */
  public static double grams(int cavities, double partG, double runnerG) {
    return cavities * partG + runnerG;
  }

  /**
   * Share of the barrel that a shot uses, percent; densities in g/cm3. Empty when the barrel or a
   * density is not above 0.
   */
  public static OptionalDouble barrelPct(
      double shotG, double ratedPsG, double resinDensityGCm3, double psDensityGCm3) {
    return ratedG(ratedPsG, resinDensityGCm3, psDensityGCm3).stream()
        .map(ratedG -> 100 * shotG / ratedG)
        .findFirst();
  }

  /** The rated shot of a barrel in another resin, grams. Empty when a figure is not above 0. */
  public static OptionalDouble ratedG(
      double ratedPsG, double resinDensityGCm3, double psDensityGCm3) {
    return ratedPsG > 0 && resinDensityGCm3 > 0 && psDensityGCm3 > 0
        ? OptionalDouble.of(ratedPsG * resinDensityGCm3 / psDensityGCm3)
        : OptionalDouble.empty();
  }

  /** Volume of a mass, cm3; empty when the density is not above 0. */
  public static OptionalDouble volumeCm3(double grams, double densityGCm3) {
    return densityGCm3 > 0 ? OptionalDouble.of(grams / densityGCm3) : OptionalDouble.empty();
  }

  /** A volume in US fluid ounces, in which some barrels are rated; not ounces of mass. */
  public static double fluidOunces(double volumeCm3) {
    return volumeCm3 / FLUID_OUNCE_CM3;
  }
}
