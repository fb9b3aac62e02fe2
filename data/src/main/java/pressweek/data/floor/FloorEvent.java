package pressweek.data.floor;

import pressweek.data.files.At;
import pressweek.data.files.EventKind;

/**
 * Something that happened on the floor, as the plan knows the things that it names. Times are
 * minutes since 1970 UTC.
 *
 * @param source row of {@code events.csv}
 * @param kind what happened
 * @param what press, mold, lot, person ({@code setter}, {@code operator} or a name) or order line
 *     ({@code order/line})
 * @param fromMin when it happened or begins
 * @param toMin when what is away is back; equals {@code fromMin} for what is not away
 * @param count people away, or good pieces made
 * @param note in words; may be empty
 */
public record FloorEvent(
    At source, EventKind kind, String what, int fromMin, int toMin, int count, String note) {
  /** True when it takes this thing away at a minute. */
  public boolean takesAway(EventKind of, String id, int minute) {
    return kind == of && what.equals(id) && fromMin <= minute && minute < toMin;
  }

  /** True when it says this of an order line. */
  public boolean says(EventKind of, String line) {
    return kind == of && what.equals(line);
  }

  /** The event in a few words: {@code press-away H1 (hydraulics)}. */
  public String words() {
    return kind.word() + " " + what + (note.isBlank() ? "" : " (" + note + ")");
  }
}
