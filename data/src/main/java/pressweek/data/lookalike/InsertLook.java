package pressweek.data.lookalike;

import java.util.OptionalDouble;
import pressweek.data.problem.Insert;

/**
 * What there is to see of an insert part, and what cannot be seen but matters.
 *
 * @param id insert part number
 * @param kind stud, through, blind and so on, by the plant's words
 * @param thread thread as the plant writes it; may be empty
 * @param lengthMm length of a stud or shaft, mm
 * @param material bar or fastener grade; may be empty
 * @param finish finish in words; may be empty
 * @param passivation {@code trivalent}, {@code hexavalent}, {@code none}, or empty when not known
 */
public record InsertLook(
    String id,
    String kind,
    String thread,
    OptionalDouble lengthMm,
    String material,
    String finish,
    String passivation) {
  /** The look of an insert part of the problem. */
  public static InsertLook of(Insert insert) {
    return new InsertLook(
        insert.id(),
        insert.kind(),
        insert.thread(),
        insert.lengthMm(),
        insert.material(),
        insert.finish(),
        insert.passivation());
  }
}
