package pressweek.app.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Run;
import pressweek.data.problem.Press;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.PlanBook;

/**
 * What the shifts of a press are used for, in minutes within the plan; what the parts leave is
 * free.
 *
 * @param press press
 * @param openMin its shifts
 * @param runMin runs in them
 * @param changeMin changes and molds taken off in them
 * @param awayMin shifts in which it is away
 * @param lateLines runs on it that are ready after they are due
 */
record PressHours(
    String press, int openMin, int runMin, int changeMin, int awayMin, int lateLines) {
  static PressHours of(PlanBook book, Press press) {
    List<Span> open =
        inside(
            Span.union(
                book.shifts().ofCalendar(press.calendar()).stream().map(ShiftSpan::span).toList()),
            book.extent());
    List<Span> working = inside(Span.union(book.working(press)), book.extent());
    int run = 0;
    int change = 0;
    int late = 0;
    for (Run r : book.runsOn(press)) {
      run += minutes(inside(working, new Span(r.startMin(), r.endMin())));
      Span changing = new Span(r.change().startMin(), r.change().endMin());
      change += minutes(inside(working, changing));
      late += book.lateMin(r) > 0 ? 1 : 0;
    }
    for (Dismount d : book.plan().dismounts()) {
      boolean here = d.press().equals(press.id());
      change += here ? minutes(inside(working, new Span(d.startMin(), d.endMin()))) : 0;
    }
    int away = minutes(open) - minutes(working);
    return new PressHours(press.id(), minutes(open), run, change, away, late);
  }

  private static List<Span> inside(List<Span> spans, Span whole) {
    return spans.stream().map(s -> s.within(whole)).filter(s -> s.minutes() > 0).toList();
  }

  private static int minutes(List<Span> spans) {
    return spans.stream().mapToInt(Span::minutes).sum();
  }

  ObjectNode json() {
    return Asked.object()
        .put("press", press)
        .put("openMin", openMin)
        .put("runMin", runMin)
        .put("changeMin", changeMin)
        .put("awayMin", awayMin)
        .put("lateLines", lateLines);
  }
}
