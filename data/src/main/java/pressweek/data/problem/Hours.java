package pressweek.data.problem;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * When the plant works.
 *
 * @param zone time zone of the plant
 * @param startMin first minute of the plan, since 1970 UTC
 * @param endMin horizon: what has not started its run before this minute is unplaced
 * @param shifts all shifts
 * @param calendars which shifts a press works
 * @param closed days on which no shift begins
 */
public record Hours(
    ZoneId zone,
    int startMin,
    int endMin,
    List<Shift> shifts,
    List<Calendar> calendars,
    List<LocalDate> closed) {
  public Hours {
    shifts = List.copyOf(shifts);
    calendars = List.copyOf(calendars);
    closed = List.copyOf(closed);
    if (endMin <= startMin) {
      throw new IllegalArgumentException("horizon ends before it starts");
    }
  }
}
