package pressweek.solver.audit;

import java.util.Collection;
import java.util.List;
import pressweek.data.problem.Calendar;

/**
 * When a press works.
 *
 * @param working minutes in which it works with people in the house
 * @param stretches the same with breaks counted in: rows of shifts without a gap, cut by downtime
 * @param going minutes in which a run without hand loading goes on: those in which the press works,
 *     and its unattended shifts
 */
record PressTime(Spans working, Spans stretches, Spans going) {
  /** The time of a press that works these shifts of the roster but when it is away. */
  static PressTime of(Calendar calendar, Roster roster, Collection<Span> away) {
    Spans downtime = Spans.union(away);
    List<ShiftTime> attended = of(calendar, roster.attended());
    Spans stretches = spans(attended).minus(downtime);
    Spans working = stretches.minus(breaks(attended));
    List<ShiftTime> alone = of(calendar, roster.unattended());
    Spans unattended = spans(alone).minus(breaks(alone)).minus(downtime);
    return new PressTime(working, stretches, working.plus(unattended));
  }

  /** The minutes from which a run takes its own. */
  Spans hours(boolean handLoad) {
    return handLoad ? working : going;
  }

  private static List<ShiftTime> of(Calendar calendar, List<ShiftTime> shifts) {
    return shifts.stream().filter(shift -> calendar.shifts().contains(shift.name())).toList();
  }

  private static Spans spans(List<ShiftTime> shifts) {
    return Spans.union(shifts.stream().map(ShiftTime::span).toList());
  }

  private static Spans breaks(List<ShiftTime> shifts) {
    return Spans.union(shifts.stream().flatMap(shift -> shift.breaks().stream()).toList());
  }
}
