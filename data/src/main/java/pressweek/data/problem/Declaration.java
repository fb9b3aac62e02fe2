package pressweek.data.problem;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a supplier has declared of a material. Pressweek looks for it and certifies nothing.
 *
 * @param source where it is entered, for example {@code records.csv:4}
 * @param what resin id or grade, {@code resin:colour} or colour, insert part or tip
 * @param need what it is declared for, for example {@code food}, {@code rohs}
 * @param issued its date; empty when not known
 * @param expiresMin first minute at which it no longer counts, minutes since 1970 UTC; empty for
 *     never
 * @param exemption exemption that it relies on; may be empty
 * @param certificate where the paper is kept; may be empty
 */
public record Declaration(
    String source,
    String what,
    String need,
    Optional<LocalDate> issued,
    OptionalInt expiresMin,
    String exemption,
    String certificate) {
  /** True when it counts at a minute since 1970 UTC. */
  public boolean validAt(int minute) {
    return expiresMin.isEmpty() || expiresMin.getAsInt() > minute;
  }
}
