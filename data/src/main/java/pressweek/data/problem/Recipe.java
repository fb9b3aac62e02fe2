package pressweek.data.problem;

import java.util.OptionalDouble;

/**
 * How a resin gets its colour.
 *
 * @param resin resin id, or empty for all resins
 * @param colour colour symbol
 * @param masterbatch masterbatch; empty when it has no name or there is none
 * @param letDownPct masterbatch in percent of the total mass; 0 without masterbatch, empty when not
 *     known
 */
public record Recipe(String resin, String colour, String masterbatch, OptionalDouble letDownPct) {}
