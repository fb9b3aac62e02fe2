package pressweek.data.molding;

/**
 * The plastic of a run by what it is mixed from, kilograms. Inserts are no plastic.
 *
 * @param naturalKg natural resin
 * @param masterbatchKg masterbatch
 * @param regrindKg ground runners of the same resin and colour
 */
public record Plastic(double naturalKg, double masterbatchKg, double regrindKg) {
  /** Kilograms of so many shots, those of the start counted. */
  public static double shotsKg(long shots, long startupShots, double shotG) {
    return (shots + startupShots) * shotG / 1000;
  }

  /**
   * What a mass of plastic is mixed from. Regrind has its colour already, so that masterbatch is
   * dosed on the rest (common practice, no source).
   *
   * @param totalKg all of it
   * @param letDownFraction masterbatch as a fraction of natural resin and masterbatch together; 0
   *     for none
   * @param regrindShare regrind as a fraction of the total
   */
  public static Plastic mix(double totalKg, double letDownFraction, double regrindShare) {
    double regrindKg = totalKg * regrindShare;
    double freshKg = totalKg - regrindKg;
    double masterbatchKg = freshKg * letDownFraction;
    return new Plastic(freshKg - masterbatchKg, masterbatchKg, regrindKg);
  }
}
