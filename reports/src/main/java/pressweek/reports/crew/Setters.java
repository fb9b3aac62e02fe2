package pressweek.reports.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.problem.Crew;
import pressweek.reports.changes.ChangeReport;
import pressweek.reports.changes.ChangeRow;
import pressweek.reports.hours.ShiftBook;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.PlanBook;

/** The minutes of setters that changes and dismounts take in each shift. */
final class Setters {
  private static final int WHOLE = 1000;

  private final PlanBook book;
  private final ShiftBook shifts;
  private final List<Part> parts = new ArrayList<>();

  /** A part of a change, in one shift. */
  private record Part(ShiftSpan shift, Claim claim) {}

  Setters(PlanBook book) {
    this.book = book;
    this.shifts = book.shifts();
    ChangeReport.rows(book).forEach(this::lay);
  }

  /** Lays a change into the shifts that it touches, their breaks cut out. */
  private void lay(ChangeRow row) {
    int minute = row.span().fromMin();
    int end = row.span().toMin();
    while (minute < end) {
      Optional<ShiftSpan> shift = ChangeReport.shift(book, row.press(), minute);
      if (shift.isEmpty()) {
        minute = shifts.after(minute).map(s -> s.span().fromMin()).orElse(end);
        continue;
      }
      Span piece = new Span(minute, Math.min(end, shift.get().span().toMin()));
      String what = row.run().isEmpty() ? row.moldOut() + " off" : row.run();
      Span.without(List.of(piece), shifts.breaks(shift.get()))
          .forEach(s -> parts.add(new Part(shift.get(), new Claim(s, WHOLE, row.press(), what))));
      minute = piece.toMin();
    }
  }

  /** What changes on these presses take in a shift. */
  List<Claim> in(ShiftSpan shift, List<String> presses) {
    return parts.stream()
        .filter(p -> p.shift().equals(shift) && presses.contains(p.claim().press()))
        .map(Part::claim)
        .toList();
  }

  /** All changes. */
  List<Claim> all() {
    return parts.stream().map(Part::claim).toList();
  }

  /** What every shift has of setters. */
  List<Claim> there() {
    return shifts.all().stream().map(s -> new Claim(s.span(), WHOLE * there(s), "", "")).toList();
  }

  /** True when no other shift with setters is under way at the same time, who could help. */
  boolean alone(ShiftSpan shift) {
    return shifts.all().stream()
        .filter(s -> !s.equals(shift) && there(s) > 0)
        .noneMatch(s -> s.span().overlaps(shift.span()));
  }

  /** Setters of a shift. */
  int there(ShiftSpan shift) {
    return book.plan().problem().plant().hours().shifts().stream()
        .filter(s -> s.name().equals(shift.shift()))
        .mapToInt(s -> s.setters())
        .sum();
  }

  /** Minutes of them that can be planned: the share of their time, breaks cut out. */
  int availableMin(ShiftSpan shift) {
    Crew crew = book.plan().problem().plant().crew();
    int open = minutes(Span.without(List.of(shift.span()), shifts.breaks(shift)));
    return there(shift) * open * crew.setterSharePct() / 100;
  }

  private static int minutes(List<Span> spans) {
    return spans.stream().mapToInt(Span::minutes).sum();
  }
}
