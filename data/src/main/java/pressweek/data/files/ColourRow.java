package pressweek.data.files;

import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * A row of {@code colours.csv}: a colour in a resin.
 *
 * @param at where it stands
 * @param resin resin; empty for all
 * @param colour colour symbol
 * @param name name in words; may be empty
 * @param srgb colour on screen as {@code RRGGBB} in capitals; empty when not known
 * @param rank the plant's own rank, 0 first to 100 last; overrules lightness
 * @param masterbatch masterbatch; may be empty
 * @param letDownPct masterbatch as percent of the total mass, whichever way it was written; 0 for a
 *     colour without masterbatch
 * @param pricePerKg thousandths of a cent a kilogram of masterbatch; empty when not known
 */
public record ColourRow(
    At at,
    String resin,
    String colour,
    String name,
    String srgb,
    OptionalDouble rank,
    String masterbatch,
    OptionalDouble letDownPct,
    OptionalLong pricePerKg) {}
