package pressweek.data.molding;

/**
 * Clamp force of a press. Computed values are estimates: the machine manual and the resin sheet
 * rule.
 *
 * <p>Force is projected area times cavity pressure times a factor (Tuczapski, "Clamp Tonnage",
 * Plastic Design International; Kuehner, Formelsammlung Polymertechnik). A stud that stands along
 * the clamp axis takes nothing off the area (from memory, on the safe side).
 */
public final class Clamp {
  /** One US (short) ton-force, kN. */
  public static final double SHORT_TON_KN = 8.896443;

  /** One square inch, cm2. */
  public static final double SQUARE_INCH_CM2 = 2.54 * 2.54;

  private Clamp() {}

  /**
   * The shadow of a shot on the parting plane, cm2: cavities that fill and the runner of a
   * two-plate mold.
   */
  public static double projectedAreaCm2(int cavities, double partAreaCm2, double runnerAreaCm2) {
    return cavities * partAreaCm2 + runnerAreaCm2;
  }

  /** The clamp force that a shot needs, kN; {@code factor} 1.1 to 1.2 is usual. */
  public static double forceKn(double areaCm2, double cavityKnCm2, double factor) {
    return areaCm2 * cavityKnCm2 * factor;
  }

  /**
   * The largest projected area, cm2, that a clamp force holds shut when only a share of it is
   * counted on.
   */
  public static double largestAreaCm2(double clampKn, double usableShare, double cavityKnCm2) {
    return clampKn * usableShare / cavityKnCm2;
  }

  /** Cavity pressure in kN/cm2 from US tons per square inch. */
  public static double knCm2FromShortTonsPerIn2(double shortTonsPerIn2) {
    return shortTonsPerIn2 * SHORT_TON_KN / SQUARE_INCH_CM2;
  }

  /** Cavity pressure in kN/cm2 from megapascals (N/mm2). */
  public static double knCm2FromMpa(double mpa) {
    return mpa / 10;
  }
}
