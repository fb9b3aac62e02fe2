package pressweek.data.problem;

import java.util.OptionalDouble;

/**
 * What colours a resin.
 *
 * @param resin resin id, or empty for all resins
 * @param colour colour symbol
 * @param name name of the masterbatch; may be empty
 * @param letDownPct masterbatch as percent of the total mass; 0 for a colour without masterbatch,
 *     empty when not known
 */
public record Masterbatch(String resin, String colour, String name, OptionalDouble letDownPct) {}
