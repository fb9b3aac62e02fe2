package pressweek.reports.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import pressweek.data.plan.PlantWide.Opened;
import pressweek.data.plan.Run;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Press;
import pressweek.data.problem.Trial;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.hours.Span;
import pressweek.reports.schedule.PlanBook;

/**
 * The minutes in which the presses of a plan work, by the words of rule PRESS_HOURS: breaks,
 * downtime and trials are out, an overtime shift counts where the plan opens it, and a shift
 * without people counts for runs without hand loading only.
 */
final class PressHours {
  private final PlanBook book;
  private final Set<String> overtime;
  private final Set<String> unattended;
  private final Map<String, List<Span>> staffed;
  private final Map<String, List<Span>> going;

  PressHours(PlanBook book) {
    this.book = book;
    Opening opening = book.plan().problem().arranged().opening();
    this.overtime =
        opening.overtime().stream().map(Opening.Overtime::shift).collect(Collectors.toSet());
    this.unattended = Set.copyOf(opening.unattended());
    this.staffed = byPress(this::staffed);
    this.going = byPress(this::going);
  }

  private Map<String, List<Span>> byPress(Function<Press, List<Span>> hours) {
    return book.presses().stream()
        .collect(Collectors.toMap(Press::id, hours, (first, second) -> first));
  }

  private List<Span> staffed(Press press) {
    List<ShiftSpan> shifts = shifts(press).stream().filter(s -> !unattended(s)).toList();
    return less(press, shifts);
  }

  private List<Span> going(Press press) {
    List<ShiftSpan> shifts = shifts(press).stream().filter(this::unattended).toList();
    List<Span> all = new ArrayList<>(less(press, shifts));
    all.addAll(staffed(press));
    return Span.union(all);
  }

  private List<ShiftSpan> shifts(Press press) {
    return book.shifts().ofCalendar(press.calendar()).stream().filter(this::isWorked).toList();
  }

  private boolean unattended(ShiftSpan shift) {
    return unattended.contains(shift.shift());
  }

  /** False for an overtime shift that the plan does not open. */
  boolean isWorked(ShiftSpan shift) {
    return !overtime.contains(shift.shift())
        || book.plan().head().plantWide().opened().stream().anyMatch(o -> isThat(o, shift));
  }

  private static boolean isThat(Opened opened, ShiftSpan shift) {
    return opened.shift().equals(shift.shift()) && opened.fromMin() == shift.span().fromMin();
  }

  private List<Span> less(Press press, List<ShiftSpan> shifts) {
    List<Span> away = new ArrayList<>();
    shifts.forEach(s -> away.addAll(book.shifts().breaks(s)));
    book.downtime(press).forEach(d -> away.add(PlanBook.span(d)));
    for (Trial trial : book.plan().problem().arranged().trials()) {
      if (trial.press().equals(press.id())) {
        away.add(new Span(trial.fromMin(), trial.toMin()));
      }
    }
    return Span.without(shifts.stream().map(ShiftSpan::span).toList(), away);
  }

  /** When a press works with people. */
  List<Span> staffed(String press) {
    return staffed.getOrDefault(press, List.of());
  }

  /** When a run makes parts. */
  List<Span> worked(Run run) {
    boolean alone = book.mold(run.mold()).map(m -> !m.handLoad()).orElse(false);
    List<Span> hours = (alone ? going : staffed).getOrDefault(run.press(), List.of());
    return within(hours, new Span(run.startMin(), run.endMin()));
  }

  /** When somebody works on a change or dismount of a press. */
  List<Span> worked(String press, Span change) {
    return within(staffed(press), change);
  }

  /** The parts of spans that lie within another. */
  static List<Span> within(List<Span> spans, Span whole) {
    return spans.stream().map(s -> s.within(whole)).filter(s -> s.minutes() > 0).toList();
  }

  /** Minutes of spans together. */
  static int minutes(List<Span> spans) {
    return spans.stream().mapToInt(Span::minutes).sum();
  }
}
