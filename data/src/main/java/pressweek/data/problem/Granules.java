package pressweek.data.problem;

import java.util.OptionalDouble;

/**
 * A resin as it comes: how its granules are dried and what a litre of them weighs. What is empty is
 * not known.
 *
 * @param resin resin id
 * @param dryH hours at temperature before the first shot; 0 for a resin that needs no drying
 * @param dryC drying temperature, degrees Celsius
 * @param dryMaxH most hours in the dryer
 * @param bulkKgL kilograms in a litre
 */
public record Granules(
    String resin,
    OptionalDouble dryH,
    OptionalDouble dryC,
    OptionalDouble dryMaxH,
    OptionalDouble bulkKgL) {}
