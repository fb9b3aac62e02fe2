package pressweek.reports.changes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.problem.Crew;
import pressweek.reports.hours.ShiftBook;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.schedule.PlanBook;

/**
 * Who checks the first article at the end of a change: an inspector when any shift says that it has
 * some, else a setter. When none is there then, the first time when one is.
 */
final class FirstArticle {
  private final PlanBook book;
  private final boolean inspected;

  FirstArticle(PlanBook book) {
    this.book = book;
    this.inspected =
        book.plan().problem().plant().hours().shifts().stream()
            .anyMatch(s -> s.inspectors().isPresent());
  }

  /** In words: {@code setter}, {@code QA: nobody there, wait until Tue 06:00}. */
  String of(ChangeRow row) {
    Crew crew = book.plan().problem().plant().crew();
    if (!inspected && !crew.settersChecked()) {
      return "setter (who is there is not recorded)";
    }
    ShiftBook shifts = book.shifts();
    String who = inspected ? "QA" : "setter";
    Set<String> staffed = inspected ? shifts.withInspectors() : shifts.withSetters();
    int end = Math.max(row.span().fromMin(), row.span().toMin() - 1);
    if (shifts.at(end, List.of(s -> staffed.contains(s.shift()))).isPresent()) {
      return who;
    }
    Optional<ShiftSpan> next =
        shifts.all().stream()
            .filter(s -> staffed.contains(s.shift()) && s.span().fromMin() > end)
            .findFirst();
    return who
        + ": nobody there, "
        + next.map(s -> "wait until " + book.clock().brief(s.span().fromMin()))
            .orElse("and no later shift has one");
  }
}
