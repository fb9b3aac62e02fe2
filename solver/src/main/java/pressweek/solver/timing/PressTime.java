package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Trial;
import pressweek.solver.timing.ShiftTimes.Piece;
import pressweek.solver.timing.ShiftTimes.Worked;

/** Builds the working time of a press: the shifts of its calendar, less breaks and downtime. */
final class PressTime {
  private static final int FIRST_TRY_DAYS = 28;
  private static final int LAST_TRY_DAYS = 448;

  private final Problem problem;
  private final Press press;
  private final OpenShifts shifts;
  private final long open;

  PressTime(Problem problem, Press press, OpenShifts shifts, long open) {
    this.problem = problem;
    this.press = press;
    this.shifts = shifts;
    this.open = open;
  }

  /**
   * The working time of the press with people in the house, long enough after the horizon for so
   * many minutes of work where the calendar has them.
   */
  Spans attended(int longestWork) {
    return build(longestWork, false);
  }

  /** The same and the shifts without people. */
  Spans withUnattended(int longestWork) {
    return build(longestWork, true);
  }

  private Spans build(int longestWork, boolean all) {
    int end = problem.plant().hours().endMin();
    int days = FIRST_TRY_DAYS;
    Spans spans = build(days, shiftNames(), all);
    while (spans.total() - spans.workBefore(end) < longestWork && days < LAST_TRY_DAYS) {
      days *= 2;
      spans = build(days, shiftNames(), all);
    }
    return spans;
  }

  private List<String> shiftNames() {
    Hours hours = problem.plant().hours();
    return hours.calendars().stream()
        .filter(c -> c.id().equals(press.calendar()))
        .findFirst()
        .map(c -> c.shifts())
        .orElseGet(() -> hours.shifts().stream().map(s -> s.name()).toList());
  }

  private Spans build(int days, List<String> names, boolean all) {
    int start = problem.plant().hours().startMin();
    List<Worked> worked = new ArrayList<>(shifts.attended(names, days, open));
    if (all) {
      worked.addAll(shifts.unattended(names, days, open));
    }
    List<Piece> pieces = new ArrayList<>();
    List<Piece> breaks = new ArrayList<>();
    for (Worked shift : worked) {
      pieces.add(new Piece(Math.max(shift.from(), start), shift.to()));
      breaks.addAll(shift.breaks());
    }
    List<Spans.Span> spans = new ArrayList<>();
    for (Piece stretch : Pieces.without(pieces, away())) {
      for (Piece work : Pieces.without(List.of(stretch), breaks)) {
        spans.add(new Spans.Span(work.from(), work.to(), stretch.to()));
      }
    }
    return new Spans(spans);
  }

  private List<Piece> away() {
    List<Piece> away = new ArrayList<>();
    for (Downtime down : problem.floor().downtime()) {
      if (down.kind() == Downtime.Kind.PRESS && down.id().equals(press.id())) {
        away.add(new Piece(down.fromMin(), down.toMin()));
      }
    }
    for (Trial trial : problem.arranged().trials()) {
      if (trial.press().equals(press.id())) {
        away.add(new Piece(trial.fromMin(), trial.toMin()));
      }
    }
    return away;
  }
}
