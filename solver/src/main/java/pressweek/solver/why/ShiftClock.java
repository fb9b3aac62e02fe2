package pressweek.solver.why;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Shift;

/**
 * Which shifts are in the house at a time.
 *
 * @param hours hours of the plant
 */
record ShiftClock(Hours hours) {
  /** The shifts in progress at a minute since 1970 UTC; between shifts the next that begins. */
  List<Shift> at(int minute) {
    LocalDateTime time = Instant.ofEpochSecond(minute * 60L).atZone(hours.zone()).toLocalDateTime();
    List<Shift> found = new ArrayList<>();
    LocalDateTime next = LocalDateTime.MAX;
    for (int back = -1; back <= 7; back++) {
      LocalDate day = time.toLocalDate().plusDays(back);
      for (Shift shift : hours.shifts()) {
        LocalDateTime from = day.atTime(shift.from());
        boolean works = shift.days().contains(day.getDayOfWeek()) && !hours.closed().contains(day);
        if (works && !from.isAfter(time) && end(shift, day).isAfter(time)) {
          found.add(shift);
        } else if (works && found.isEmpty() && from.isAfter(time) && from.isBefore(next)) {
          next = from;
        }
      }
    }
    return found.isEmpty() && next.isBefore(LocalDateTime.MAX) ? beginning(next) : found;
  }

  private List<Shift> beginning(LocalDateTime from) {
    return hours.shifts().stream()
        .filter(s -> s.days().contains(from.getDayOfWeek()))
        .filter(s -> s.from().equals(from.toLocalTime()))
        .toList();
  }

  private static LocalDateTime end(Shift shift, LocalDate day) {
    boolean nextDay = !shift.to().isAfter(shift.from());
    return (nextDay ? day.plusDays(1) : day).atTime(shift.to());
  }
}
