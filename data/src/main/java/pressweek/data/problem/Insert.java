package pressweek.data.problem;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An insert part.
 *
 * @param id insert part number
 * @param kind stud, through nut, blind nut and so on, by the plant's words
 * @param thread thread in full, for example {@code M8x1.25} or {@code 5/16-18 UNC}; may be empty
 * @param lengthMm length of a stud or shaft
 * @param material bar or fastener grade, for example {@code A2}
 * @param finish finish in words; may be empty
 * @param passivation {@code trivalent}, {@code hexavalent}, {@code none}, or empty when not known
 * @param loadS seconds to load one piece by hand
 * @param tip tip that is on it; empty without one
 */
public record Insert(
    String id,
    String kind,
    String thread,
    OptionalDouble lengthMm,
    String material,
    String finish,
    String passivation,
    OptionalDouble loadS,
    Optional<String> tip) {
  /** An insert part without a tip. */
  public Insert(
      String id,
      String kind,
      String thread,
      OptionalDouble lengthMm,
      String material,
      String finish,
      String passivation,
      OptionalDouble loadS) {
    this(id, kind, thread, lengthMm, material, finish, passivation, loadS, Optional.empty());
  }
}
