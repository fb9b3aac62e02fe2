package pressweek.solver.audit;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import pressweek.data.problem.Break;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Shift;

/**
 * A shift on one day.
 *
 * @param shift the shift that repeats
 * @param span from its start to its end, breaks counted
 * @param breaks its breaks on that day
 */
record ShiftTime(Shift shift, Span span, List<Span> breaks) {
  ShiftTime {
    breaks = List.copyOf(breaks);
  }

  String name() {
    return shift.name();
  }

  /**
   * All shifts that begin from the first day to the last; none begins on a closed day. Overtime
   * counts whether it is opened or not.
   */
  static List<ShiftTime> all(Hours hours, Clock clock, LocalDate first, LocalDate last) {
    Set<LocalDate> closed = Set.copyOf(hours.closed());
    List<ShiftTime> times = new ArrayList<>();
    for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
      for (Shift shift : hours.shifts()) {
        if (shift.days().contains(day.getDayOfWeek()) && !closed.contains(day)) {
          times.add(on(day, shift, clock));
        }
      }
    }
    return times;
  }

  private static ShiftTime on(LocalDate day, Shift shift, Clock clock) {
    Span span = span(day, shift.from(), shift.to(), clock);
    List<Span> breaks = new ArrayList<>();
    for (Break pause : shift.breaks()) {
      LocalDate begins = pause.from().isBefore(shift.from()) ? day.plusDays(1) : day;
      breaks.add(span(begins, pause.from(), pause.to(), clock).and(span));
    }
    return new ShiftTime(shift, span, breaks);
  }

  private static Span span(LocalDate day, LocalTime from, LocalTime to, Clock clock) {
    LocalDate ends = to.isAfter(from) ? day : day.plusDays(1);
    return new Span(clock.minute(day, from), clock.minute(ends, to));
  }
}
