package pressweek.data.files;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;

/** A time as it stands in an input file, before the plant's zone is applied. */
public sealed interface When {
  /** A date alone. */
  record Day(LocalDate date) implements When {}

  /** A local date and time. */
  record Local(LocalDateTime time) implements When {}

  /** A date and time with an offset. */
  record Exact(Instant instant) implements When {}

  /**
   * The minute since 1970-01-01T00:00Z, seconds cut off.
   *
   * @param zone zone of the plant; a local time that a clock change skips counts as the first
   *     instant after the gap, one that occurs twice as the first
   * @param ofDay the time of day that a date alone stands for
   */
  default int minute(ZoneId zone, LocalTime ofDay) {
    if (this instanceof Day day) {
      return minute(day.date().atTime(ofDay), zone);
    }
    if (this instanceof Local local) {
      return minute(local.time(), zone);
    }
    return minute(((Exact) this).instant());
  }

  private static int minute(LocalDateTime time, ZoneId zone) {
    ZoneOffsetTransition transition = zone.getRules().getTransition(time);
    boolean skipped = transition != null && transition.isGap();
    return minute(skipped ? transition.getInstant() : time.atZone(zone).toInstant());
  }

  private static int minute(Instant instant) {
    return Math.toIntExact(Math.floorDiv(instant.getEpochSecond(), 60L));
  }
}
