package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.solver.timing.ShiftTimes.Piece;
import pressweek.solver.timing.ShiftTimes.Worked;

/** Builds the working time of a press: the shifts of its calendar, less breaks and downtime. */
final class PressTime {
  private static final int FIRST_TRY_DAYS = 28;
  private static final int LAST_TRY_DAYS = 448;

  private PressTime() {}

  /**
   * The working time of a press, long enough after the horizon for so many minutes of work where
   * the calendar has them.
   */
  static Spans of(Problem problem, Press press, int longestWork) {
    Hours hours = problem.plant().hours();
    int days = FIRST_TRY_DAYS;
    Spans spans = build(problem, press, days);
    while (spans.total() - spans.workBefore(hours.endMin()) < longestWork && days < LAST_TRY_DAYS) {
      days *= 2;
      spans = build(problem, press, days);
    }
    return spans;
  }

  /** Names of the shifts that a press works. */
  static List<String> shiftNames(Hours hours, String calendar) {
    return hours.calendars().stream()
        .filter(c -> c.id().equals(calendar))
        .findFirst()
        .map(c -> c.shifts())
        .orElseGet(() -> hours.shifts().stream().map(s -> s.name()).toList());
  }

  private static Spans build(Problem problem, Press press, int days) {
    Hours hours = problem.plant().hours();
    List<Piece> shifts = new ArrayList<>();
    List<Piece> breaks = new ArrayList<>();
    for (Worked worked : ShiftTimes.of(hours, shiftNames(hours, press.calendar()), days)) {
      shifts.add(new Piece(Math.max(worked.from(), hours.startMin()), worked.to()));
      breaks.addAll(worked.breaks());
    }
    List<Piece> away = new ArrayList<>();
    for (Downtime down : problem.floor().downtime()) {
      if (down.kind() == Downtime.Kind.PRESS && down.id().equals(press.id())) {
        away.add(new Piece(down.fromMin(), down.toMin()));
      }
    }
    List<Spans.Span> spans = new ArrayList<>();
    for (Piece stretch : Pieces.without(shifts, away)) {
      for (Piece work : Pieces.without(List.of(stretch), breaks)) {
        spans.add(new Spans.Span(work.from(), work.to(), stretch.to()));
      }
    }
    return new Spans(spans);
  }
}
