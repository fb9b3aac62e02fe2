package pressweek.solver.timing;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pressweek.data.problem.Break;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Shift;

/** Shifts as they fall in a stretch of days, in minutes since 1970 UTC. */
final class ShiftTimes {
  private ShiftTimes() {}

  /** Minutes from inclusive to exclusive. */
  record Piece(int from, int to) {}

  /** One shift on one day. */
  record Worked(Shift shift, int from, int to, List<Piece> breaks) {}

  /**
   * The named shifts from two days before the plan starts to so many days after the horizon, in
   * time order.
   */
  static List<Worked> of(Hours hours, List<String> names, int daysAfter) {
    LocalDate first = day(hours.startMin(), hours.zone()).minusDays(2);
    LocalDate last = day(hours.endMin(), hours.zone()).plusDays(daysAfter);
    List<Worked> all = new ArrayList<>();
    for (Shift shift : hours.shifts()) {
      if (names.contains(shift.name())) {
        for (LocalDate date = first; !date.isAfter(last); date = date.plusDays(1)) {
          if (shift.days().contains(date.getDayOfWeek()) && !hours.closed().contains(date)) {
            all.add(on(shift, date, hours.zone()));
          }
        }
      }
    }
    all.sort(Comparator.comparingInt(Worked::from).thenComparing(w -> w.shift().name()));
    return all;
  }

  private static Worked on(Shift shift, LocalDate date, ZoneId zone) {
    int from = minute(date, shift.from(), zone);
    boolean nextDay = !shift.to().isAfter(shift.from());
    int to = minute(nextDay ? date.plusDays(1) : date, shift.to(), zone);
    List<Piece> breaks = new ArrayList<>();
    for (Break pause : shift.breaks()) {
      LocalDate start = pause.from().isBefore(shift.from()) ? date.plusDays(1) : date;
      LocalDate end = pause.to().isAfter(pause.from()) ? start : start.plusDays(1);
      breaks.add(new Piece(minute(start, pause.from(), zone), minute(end, pause.to(), zone)));
    }
    return new Worked(shift, from, to, breaks);
  }

  static int minute(LocalDate date, LocalTime time, ZoneId zone) {
    return Math.toIntExact(Math.floorDiv(date.atTime(time).atZone(zone).toEpochSecond(), 60));
  }

  private static LocalDate day(int minute, ZoneId zone) {
    return java.time.Instant.ofEpochSecond(minute * 60L).atZone(zone).toLocalDate();
  }
}
