package pressweek.reports.changes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import pressweek.data.plan.Change;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Run;
import pressweek.data.problem.Setup;
import pressweek.reports.hours.ShiftBook;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.Kinds;
import pressweek.reports.schedule.PlanBook;

/**
 * What the setters do: a row a change that exchanges something or clears for food, and a row a
 * dismount, in order of time.
 */
public final class ChangeReport {
  private static final Setup NOTHING = new Setup("", "", "", "");

  private ChangeReport() {}

  /** The rows of the change list. */
  public static List<ChangeRow> rows(PlanBook book) {
    Stream<ChangeRow> changes =
        book.plan().runs().stream()
            .filter(r -> !r.change().kinds().isEmpty())
            .map(r -> ofRun(book, r));
    Stream<ChangeRow> dismounts = book.plan().dismounts().stream().map(d -> ofDismount(book, d));
    return Stream.concat(changes, dismounts)
        .sorted(Comparator.comparing((ChangeRow r) -> r.span().fromMin()))
        .toList();
  }

  private static ChangeRow ofRun(PlanBook book, Run run) {
    Change change = run.change();
    return new ChangeRow(
        run.press(),
        new Span(change.startMin(), change.endMin()),
        change.minutes(),
        shift(book, run.press(), change.startMin()),
        change.kinds().stream().map(Kinds::words).toList(),
        new ChangeRow.Setups(change.from(), change.to()),
        change.purgeG(),
        run.id());
  }

  private static ChangeRow ofDismount(PlanBook book, Dismount dismount) {
    Setup mounted = new Setup(dismount.mold(), "", "", "");
    return new ChangeRow(
        dismount.press(),
        new Span(dismount.startMin(), dismount.endMin()),
        dismount.minutes(),
        shift(book, dismount.press(), dismount.startMin()),
        List.of("dismount"),
        new ChangeRow.Setups(mounted, NOTHING),
        0,
        "");
  }

  /**
   * The setters' shift under way on a press at a minute: a shift with setters before one without, a
   * shift of the press before others.
   */
  public static Optional<ShiftSpan> shift(PlanBook book, String press, int minute) {
    ShiftBook shifts = book.shifts();
    Set<String> setters = shifts.withSetters();
    String calendar = book.calendar(press);
    return shifts.at(
        minute,
        List.of(
            s -> setters.contains(s.shift()) && shifts.belongs(s.shift(), calendar),
            s -> setters.contains(s.shift()),
            s -> shifts.belongs(s.shift(), calendar),
            s -> true));
  }
}
