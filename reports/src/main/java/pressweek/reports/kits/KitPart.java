package pressweek.reports.kits;

import java.util.Optional;

/**
 * A part of a kit.
 *
 * @param kind what it is
 * @param what its id; empty where it has none
 * @param words what it is in words
 * @param lot lot; empty when none is named
 * @param bin bin; empty likewise
 * @param amount pieces, or grams of what is weighed, with what is allowed for scrap, start-up,
 *     samples and loss; empty when not known
 * @param note what to know or to mind; may be empty
 */
public record KitPart(
    PartKind kind,
    String what,
    String words,
    String lot,
    String bin,
    Optional<Integer> amount,
    String note) {
  /** Pieces; empty for what is weighed. */
  public Optional<Integer> pieces() {
    return kind.weighed() ? Optional.empty() : amount;
  }

  /** Grams; empty for what is counted. */
  public Optional<Integer> grams() {
    return kind.weighed() ? amount : Optional.empty();
  }
}
