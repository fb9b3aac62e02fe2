package pressweek.data.lookalike;

/**
 * Two insert parts that a person could take for each other, seen from the one that is wanted.
 *
 * @param a part number of the one that is wanted
 * @param b part number of the other
 * @param difference what the other has instead, and why that is easily overlooked: {@code 5/16-18
 *     UNC instead of M8x1.25, diameters 0.8 % apart}
 * @param toldBy what tells them apart: {@code a steel rule}
 */
public record LookAlike(String a, String b, String difference, String toldBy) {}
