package pressweek.data.published;

import java.util.OptionalDouble;

/**
 * A strength grade, property class or steel group with class, as a standard gives it for a range of
 * sizes: minimum values.
 *
 * <p>It holds for bolts, screws and studs made to the standard, and for nothing else. Nuts have
 * standards of their own (SAE J995, ISO 898-2, ISO 3506-2), and an insert turned from bar has the
 * strength of its bar, which the mill certificate gives.
 *
 * @param standard standard: {@code SAE J429}, {@code ISO 898-1}, {@code ISO 3506-1}
 * @param name name in the standard: {@code 5}, {@code 8.8}, {@code A2-70}
 * @param fromMm smallest nominal diameter, mm; empty for the standard's own limit
 * @param toMm largest nominal diameter, mm; empty for the standard's own limit
 * @param proofMpa strength under proof load, MPa; empty when the standard has none
 * @param yieldMpa lower yield or 0.2 % proof strength, MPa
 * @param tensileMpa tensile strength, MPa
 */
public record Grade(
    String standard,
    String name,
    OptionalDouble fromMm,
    OptionalDouble toMm,
    OptionalDouble proofMpa,
    double yieldMpa,
    double tensileMpa) {
  /** A ksi (1,000 pounds-force on a square inch) in MPa: 0.45359237 kg, 9.80665 m/s2, 25.4 mm. */
  public static final double KSI_MPA = 0.45359237 * 9.80665 * 1000 / (25.4 * 25.4);

  /** What turning inches into mm may leave. */
  private static final double ROUNDING_MM = 1e-6;

  public Grade {
    if (standard.isBlank() || name.isBlank()) {
      throw new IllegalArgumentException("a grade must have a standard and a name");
    }
    if (!(yieldMpa > 0 && tensileMpa > yieldMpa) || proofMpa.orElse(yieldMpa) > yieldMpa) {
      throw new IllegalArgumentException(
          standard + " " + name + ": expected proof <= yield < tensile strength, above 0");
    }
  }

  /** True when the row covers a nominal diameter; at a limit between two rows both say so. */
  public boolean covers(double diameterMm) {
    return diameterMm >= fromMm.orElse(0) - ROUNDING_MM
        && diameterMm <= toMm.orElse(Double.MAX_VALUE) + ROUNDING_MM;
  }
}
