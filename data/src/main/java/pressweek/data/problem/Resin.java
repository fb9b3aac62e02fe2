package pressweek.data.problem;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A resin grade.
 *
 * @param id symbol by ISO 1043-1, for example {@code PA66-GF30}
 * @param grade grade name of the plant; may be empty
 * @param densityGCm3 solid density, g/cm3
 * @param meltC melt temperature, degrees Celsius
 * @param cavityKnCm2 cavity pressure, kN/cm2
 * @param pricePerKg thousandths of a cent a kilogram; 0 when not known
 * @param barrel barrel that it needs
 * @param neverNextTo resins that may not come before or after it in one barrel
 */
public record Resin(
    String id,
    String grade,
    OptionalDouble densityGCm3,
    OptionalDouble meltC,
    OptionalDouble cavityKnCm2,
    long pricePerKg,
    Barrel barrel,
    List<String> neverNextTo) {
  public Resin {
    neverNextTo = List.copyOf(neverNextTo);
  }
}
