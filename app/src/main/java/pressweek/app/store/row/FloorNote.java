package pressweek.app.store.row;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the floor reported.
 *
 * @param id its number in the book
 * @param event what happened
 * @param by who reported it
 * @param at when it was reported
 * @param planNumber the plan into which it was taken; empty while it is not
 */
public record FloorNote(long id, Event event, String by, Instant at, Optional<String> planNumber) {
  /**
   * What happened on the floor.
   *
   * @param kind the event, such as a press that is away
   * @param what the press, mold, person, run, line or lot it is about
   * @param from from when; empty if it has no time
   * @param until until when; empty if that is not known
   * @param quantity pieces; empty if it has none
   * @param note in the words of who reported it
   */
  public record Event(
      String kind,
      String what,
      Optional<Instant> from,
      Optional<Instant> until,
      OptionalInt quantity,
      String note) {}
}
