package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Downtime;

/**
 * When a press works.
 *
 * @param working minutes in which it works
 * @param stretches the same with breaks counted in: rows of shifts without a gap, cut by downtime
 */
record PressTime(Spans working, Spans stretches) {
  static PressTime of(Calendar calendar, List<ShiftTime> shifts, List<Downtime> away) {
    List<Span> spans = new ArrayList<>();
    List<Span> breaks = new ArrayList<>();
    for (ShiftTime shift : shifts) {
      if (calendar.shifts().contains(shift.shift().name())) {
        spans.add(shift.span());
        breaks.addAll(shift.breaks());
      }
    }
    Spans downtime =
        Spans.union(away.stream().map(time -> new Span(time.fromMin(), time.toMin())).toList());
    Spans stretches = Spans.union(spans).minus(downtime);
    return new PressTime(stretches.minus(Spans.union(breaks)), stretches);
  }
}
