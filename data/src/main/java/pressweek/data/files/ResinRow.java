package pressweek.data.files;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import pressweek.data.problem.Barrel;

/**
 * A row of {@code resins.csv}: a resin grade.
 *
 * @param at where it stands
 * @param resin symbol, for example {@code PA66-GF30}
 * @param grade grade name; may be empty
 * @param densityGCm3 solid density, g/cm3
 * @param meltC melt temperature, degrees Celsius
 * @param moldC mold temperature, degrees Celsius
 * @param ejectC ejection temperature, degrees Celsius
 * @param diffusivity thermal diffusivity, mm2/s
 * @param cavityKnCm2 cavity pressure, kN/cm2
 * @param dryH hours of drying before the first shot
 * @param dryC drying temperature, degrees Celsius
 * @param dryMaxH most hours in the dryer, which some resins do not bear to exceed
 * @param bulkKgL bulk density of the granules, kg/L
 * @param curePerMmS seconds of curing for a millimetre of wall, for thermosets
 * @param preheatInserts true when inserts are heated before they go into it
 * @param regrindMaxPct most regrind that is allowed, percent
 * @param pricePerKg thousandths of a cent a kilogram; empty when not known
 * @param barrel barrel that it needs
 * @param residenceMaxMin longest stay in the barrel, minutes
 * @param neverNextTo resins that may not come before or after it in one barrel
 */
public record ResinRow(
    At at,
    String resin,
    String grade,
    OptionalDouble densityGCm3,
    OptionalDouble meltC,
    OptionalDouble moldC,
    OptionalDouble ejectC,
    OptionalDouble diffusivity,
    OptionalDouble cavityKnCm2,
    OptionalDouble dryH,
    OptionalDouble dryC,
    OptionalDouble dryMaxH,
    OptionalDouble bulkKgL,
    OptionalDouble curePerMmS,
    boolean preheatInserts,
    OptionalDouble regrindMaxPct,
    OptionalLong pricePerKg,
    Barrel barrel,
    OptionalDouble residenceMaxMin,
    List<String> neverNextTo) {
  public ResinRow {
    neverNextTo = List.copyOf(neverNextTo);
  }
}
