package pressweek.solver.audit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * The plant's local time as minutes since 1970 UTC and back.
 *
 * @param zone zone of the plant
 */
record Clock(ZoneId zone) {
  private static final DateTimeFormatter FULL =
      DateTimeFormatter.ofPattern("EEE uuuu-MM-dd HH:mm", Locale.ROOT);
  private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /**
   * The minute of a local time. One that a clock change skips is the first minute after the gap;
   * one that it repeats is the first of the two.
   */
  long minute(LocalDate day, LocalTime time) {
    LocalDateTime local = day.atTime(time);
    boolean skipped = zone.getRules().getValidOffsets(local).isEmpty();
    Instant instant =
        skipped
            ? zone.getRules().getTransition(local).getInstant()
            : ZonedDateTime.of(local, zone).withEarlierOffsetAtOverlap().toInstant();
    return Math.floorDiv(instant.getEpochSecond(), 60L);
  }

  /** The local day in which a minute falls. */
  LocalDate day(long minute) {
    return at(minute).toLocalDate();
  }

  /**
   * A minute in words, for example {@code Tue 2026-12-01 10:00}; with its offset when the local
   * time occurs twice.
   */
  String text(long minute) {
    return at(minute).format(FULL) + offset(at(minute));
  }

  /** A minute as seen from another: the time of day alone when both are on one local day. */
  String text(long minute, long seenFrom) {
    ZonedDateTime at = at(minute);
    return at.toLocalDate().equals(day(seenFrom)) ? at.format(SHORT) + offset(at) : text(minute);
  }

  private String offset(ZonedDateTime at) {
    boolean repeated = zone.getRules().getValidOffsets(at.toLocalDateTime()).size() > 1;
    return repeated ? at.getOffset().getId() : "";
  }

  private ZonedDateTime at(long minute) {
    return Instant.ofEpochSecond(Math.multiplyExact(minute, 60L)).atZone(zone);
  }
}
