package pressweek.data.problem;

import java.util.Optional;

/**
 * Pieces of an insert part or of another component that a run takes from stock; grams where the
 * component is weighed.
 *
 * @param insert insert part, or the id of another component
 * @param pieces pieces for the run itself, with samples and loss, less what is reserved in lots for
 *     this order
 * @param startupPieces further pieces for start-up shots, taken only when the run begins with a
 *     change
 * @param reservedPieces pieces that come from lots reserved for this order and so not from free
 *     stock
 * @param other what it is when it is no insert part; empty for one
 */
public record Take(
    String insert,
    int pieces,
    int startupPieces,
    int reservedPieces,
    Optional<Component> other) {
  /** Pieces of an insert part. */
  public Take(String insert, int pieces, int startupPieces, int reservedPieces) {
    this(insert, pieces, startupPieces, reservedPieces, Optional.empty());
  }

  /** What it is. */
  public Component component() {
    return other.orElse(Component.INSERT);
  }
}
