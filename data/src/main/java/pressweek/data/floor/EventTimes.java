package pressweek.data.floor;

import java.time.Instant;
import java.time.LocalTime;
import java.util.Optional;
import pressweek.data.files.EventKind;
import pressweek.data.files.EventRow;
import pressweek.data.files.When;
import pressweek.data.problem.Hours;

/**
 * The times of events on the clock of a plan; a date alone is its 00:00.
 *
 * @param hours hours of the plan
 * @param nowMin the present, minutes since 1970 UTC
 */
record EventTimes(Hours hours, int nowMin) {
  /** When it happened: now, where the row does not say. */
  int from(EventRow row) {
    return row.at().map(this::minute).orElse(nowMin);
  }

  /** When what is away is back: at the horizon's end, where the row does not say. */
  int to(EventRow row) {
    if (!row.event().away()) {
      return from(row);
    }
    return row.until().map(this::minute).orElse(hours.endMin());
  }

  /** What is wrong with the times of a row. */
  Optional<String> wrong(EventRow row) {
    int from = from(row);
    if (from < hours.startMin() || from >= hours.endMin()) {
      return Optional.of(
          "at %s is outside the plan; expected a time from %s to %s"
              .formatted(words(from), words(hours.startMin()), words(hours.endMin())));
    }
    if (row.event().away() && to(row) <= from) {
      return Optional.of(
          "until %s is not after at %s; expected a later time"
              .formatted(words(to(row)), words(from)));
    }
    boolean past = row.event().ofLine() || row.event() == EventKind.LOT_HELD;
    if (past && from > nowMin) {
      return Optional.of(
          "at %s is still to come; expected no later than %s, the present of this plan"
              .formatted(words(from), words(nowMin)));
    }
    return Optional.empty();
  }

  private int minute(When when) {
    return when.minute(hours.zone(), LocalTime.MIN);
  }

  private String words(int minute) {
    return Instant.ofEpochSecond(minute * 60L)
        .atZone(hours.zone())
        .toLocalDateTime()
        .toString()
        .replace('T', ' ');
  }
}
