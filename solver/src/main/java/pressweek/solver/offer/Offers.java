package pressweek.solver.offer;

import java.util.Optional;
import pressweek.data.problem.Unplaced;

/**
 * What can be offered for a new line. Each is the best that was found; a better one is not excluded
 * unless it is said so.
 *
 * @param unharmed the earliest with nobody made late; empty where none was found within the plan
 * @param byNeed the cheapest that is ready when it is needed; empty where none was found
 * @param soonest the earliest whoever pays; empty where the line finds no place at all
 * @param noPlace why it finds no place; empty where it finds one
 * @param tried places that were tried, each by carrying the plan out anew
 * @param searches searches beside them
 * @param cutShort whether it was stopped before its end: what is missing may be found yet, and what
 *     is there may be later or dearer than need be
 */
public record Offers(
    Optional<Offer> unharmed,
    Optional<Offer> byNeed,
    Optional<Offer> soonest,
    Optional<Unplaced> noPlace,
    int tried,
    int searches,
    boolean cutShort) {
  /** Nothing found. */
  static Offers none(int tried, int searches, boolean cutShort) {
    return new Offers(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        tried,
        searches,
        cutShort);
  }
}
