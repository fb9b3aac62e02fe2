package pressweek.data.problem;

import java.util.OptionalDouble;

/**
 * A colour in a resin.
 *
 * @param resin resin id, or empty for all resins
 * @param id colour symbol
 * @param name name in words
 * @param srgb the colour on screen as {@code RRGGBB}; empty when not known
 * @param lightness what the change table compares: CIE L* 0 (black) to 100 (white) of the sRGB
 *     value, or 100 less the plant's own rank where it gives one; empty when neither is known
 */
public record Colour(String resin, String id, String name, String srgb, OptionalDouble lightness) {}
