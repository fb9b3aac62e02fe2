package pressweek.data.files;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A row of {@code events.csv}: something that happened on the floor.
 *
 * @param source where it stands
 * @param event what happened
 * @param what press, mold, person, order or lot
 * @param line line of the order; may be empty
 * @param at when it happened or begins
 * @param until when what is away is back
 * @param count people away, or good pieces made
 * @param note in words; may be empty
 * @param item item code of a new order line; may be empty, as the next two
 * @param quantity its pieces
 * @param due when it is due
 * @param needs what it demands, for example {@code food}
 */
public record EventRow(
    At source,
    EventKind event,
    String what,
    String line,
    Optional<When> at,
    Optional<When> until,
    OptionalInt count,
    String note,
    String item,
    OptionalInt quantity,
    Optional<When> due,
    List<String> needs) {
  public EventRow {
    needs = List.copyOf(needs);
  }
}
