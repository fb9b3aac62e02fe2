package pressweek.app.store.row;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * Who changed something, when and why.
 *
 * @param by name of the person
 * @param at when, to the millisecond
 * @param why the reason in that person's words; empty for none
 */
public record Change(String by, Instant at, String why) {
  public Change {
    Objects.requireNonNull(by, "by");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(why, "why");
    at = at.truncatedTo(ChronoUnit.MILLIS);
  }

  /** A change for which no reason was given. */
  public static Change of(String by, Instant at) {
    return new Change(by, at, "");
  }
}
