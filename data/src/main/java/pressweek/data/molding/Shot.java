package pressweek.data.molding;

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

  /**
   * Melt in the barrel over its rated shot, for the flights of the screw (published how-to on
   * residence time).
   */
  public static final double INVENTORY_FACTOR = 1.4;

  private Shot() {}

  /** Grams of plastic in a shot; inserts are no plastic. */
  public static double grams(int cavities, double partG, double runnerG) {
    return cavities * partG + runnerG;
  }

  /** Share of the barrel that a shot uses, percent; densities in g/cm3. */
  public static double barrelPct(
      double shotG, double ratedPsG, double resinDensityGCm3, double psDensityGCm3) {
    return 100 * shotG / (ratedPsG * resinDensityGCm3 / psDensityGCm3);
  }

  /** Volume of a mass, cm3. */
  public static double volumeCm3(double grams, double densityGCm3) {
    return grams / densityGCm3;
  }

  /** A volume in US fluid ounces, in which some barrels are rated; not ounces of mass. */
  public static double fluidOunces(double volumeCm3) {
    return volumeCm3 / FLUID_OUNCE_CM3;
  }

  /** How long the melt stays in the barrel, seconds. */
  public static double residenceS(double ratedShotG, double shotG, double cycleS) {
    return ratedShotG * INVENTORY_FACTOR / shotG * cycleS;
  }
}
