package pressweek.reports.crew;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Run;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.PlanBook;

/** The operators that runs need while they work. */
final class Operators {
  private Operators() {}

  /** A claim for every stretch in which a run works on these presses. */
  static List<Claim> of(PlanBook book, List<Press> presses) {
    List<Claim> claims = new ArrayList<>();
    for (Press press : presses) {
      List<Span> working = working(book, press);
      for (Run run : book.runsOn(press)) {
        int thousandths =
            book.option(run).map(Option::pace).map(p -> p.operatorThousandths()).orElse(0);
        Span whole = new Span(run.startMin(), run.endMin());
        working.stream()
            .map(s -> s.within(whole))
            .filter(s -> s.minutes() > 0)
            .forEach(s -> claims.add(new Claim(s, thousandths, press.id(), run.id())));
      }
    }
    return claims;
  }

  /** When a press works, its breaks cut out. */
  private static List<Span> working(PlanBook book, Press press) {
    List<Span> breaks =
        book.shifts().ofCalendar(press.calendar()).stream()
            .flatMap(s -> book.shifts().breaks(s).stream())
            .toList();
    return Span.without(book.working(press), breaks);
  }

  /** What every shift has of them. */
  static List<Claim> there(PlanBook book) {
    List<Claim> there = new ArrayList<>();
    for (ShiftSpan span : book.shifts().all()) {
      int thousandths =
          book.plan().problem().plant().hours().shifts().stream()
              .filter(s -> s.name().equals(span.shift()))
              .mapToInt(s -> s.operatorThousandths())
              .sum();
      there.add(new Claim(span.span(), thousandths, "", ""));
    }
    return there;
  }
}
