package pressweek.data.problem;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Pieces of an insert part or of another component that a run takes from stock; grams where the
 * component is weighed.
 *
 * @param insert insert part, or the id of another component
 * @param pieces pieces for the run itself, with samples and loss, less what is reserved in lots for
 *     this order
 * @param startupPieces further pieces from free stock for start-up shots, taken only when the run
 *     begins with a change
 * @param reservedPieces pieces for the run itself that come from lots reserved for this order and
 *     so not from free stock
 * @param other what it is when it is no insert part; empty for one
 * @param reservedStartup further pieces for start-up shots that come from such lots; empty for none
 */
public record Take(
    String insert,
    int pieces,
    int startupPieces,
    int reservedPieces,
    Optional<Component> other,
    OptionalInt reservedStartup) {
  /** Pieces of an insert part. */
  public Take(String insert, int pieces, int startupPieces, int reservedPieces) {
    this(insert, pieces, startupPieces, reservedPieces, Optional.empty(), OptionalInt.empty());
  }

  /** Pieces of another component. */
  public Take(Component component, String what, int pieces, int startupPieces, int reservedPieces) {
    this(
        what,
        pieces,
        startupPieces,
        reservedPieces,
        Optional.of(component).filter(kind -> kind != Component.INSERT),
        OptionalInt.empty());
  }

  /** The same with start-up pieces from lots reserved for this order. */
  public Take withReservedStartup(int more) {
    return new Take(
        insert,
        pieces,
        startupPieces,
        reservedPieces,
        other,
        more == 0 ? OptionalInt.empty() : OptionalInt.of(more));
  }

  /** Pieces from free stock for a run that begins with a change, or without one. */
  public int free(boolean change) {
    return pieces + (change ? startupPieces : 0);
  }

  /** Pieces from lots reserved for this order for a run that begins with a change, or without. */
  public int reserved(boolean change) {
    return reservedPieces + (change ? reservedStartup.orElse(0) : 0);
  }

  /** What it is. */
  public Component component() {
    return other.orElse(Component.INSERT);
  }
}
