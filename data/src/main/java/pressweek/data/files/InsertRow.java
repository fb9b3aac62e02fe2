package pressweek.data.files;

import java.util.OptionalDouble;

/**
 * A row of {@code inserts.csv}: an insert part.
 *
 * @param at where it stands
 * @param insert insert part number
 * @param kind {@code stud}, {@code through}, {@code blind}, {@code lock}, {@code tall}, {@code
 *     bushing}, {@code shaft} or {@code arm}
 * @param thread thread in full; may be empty
 * @param lengthMm length of a stud or shaft, mm
 * @param material bar or fastener grade; may be empty
 * @param finish finish in words; may be empty
 * @param passivation {@code trivalent}, {@code hexavalent}, {@code none}; empty when not known
 * @param tip tip on the stud; may be empty
 * @param loadS seconds to load one piece by hand
 * @param preheatC preheating, degrees Celsius
 * @param heatMaxC hottest that its finish and tip bear, degrees Celsius
 */
public record InsertRow(
    At at,
    String insert,
    String kind,
    String thread,
    OptionalDouble lengthMm,
    String material,
    String finish,
    String passivation,
    String tip,
    OptionalDouble loadS,
    OptionalDouble preheatC,
    OptionalDouble heatMaxC) {}
