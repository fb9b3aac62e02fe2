package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pressweek.reports.handover.Difference;
import pressweek.reports.handover.Handover;
import pressweek.reports.handover.HandoverRow;
import pressweek.reports.handover.RunState;
import pressweek.reports.hours.Minutes;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;

/** What changed since the plan that is replaced: each row with what it was and what it is. */
final class HandoverSheet {
  private final PlanBook book;

  HandoverSheet(PlanBook book) {
    this.book = book;
  }

  /** The table, or the sentence that nothing changed. */
  List<Element> content(Handover handover) {
    if (handover.rows().isEmpty()) {
      return List.of(Element.of("p").text(handover.whenEmpty()));
    }
    return List.of(
        new PageTable<HandoverRow>("handover")
            .ticks("done")
            .lines("press", r -> changed(r, s -> s.run().press()))
            .key("line", r -> r.order() + "/" + r.line())
            .text("item", HandoverRow::item)
            .text("run", HandoverRow::runId)
            .lines("what changed", r -> r.what().stream().map(Difference::words).toList())
            .lines("start", r -> changed(r, s -> book.clock().brief(s.run().startMin())))
            .lines("mold", r -> changed(r, s -> s.run().mold()))
            .lines("pieces", r -> changed(r, HandoverSheet::pieces))
            .lines("inserts", HandoverSheet::inserts)
            .lines("late", r -> changed(r, HandoverSheet::late))
            .text("why unplaced", HandoverRow::reason)
            .rows(handover.rows())
            .element());
  }

  /** What it was and, when that is something else, what it is. */
  private static List<String> changed(HandoverRow row, Function<RunState, String> part) {
    Optional<String> before = row.before().map(part);
    Optional<String> now = row.now().map(part);
    List<String> lines = new ArrayList<>();
    if (before.isPresent() && now.isPresent() && !before.equals(now)) {
      lines.add("was " + before.get());
    }
    now.or(() -> before).ifPresent(lines::add);
    return lines;
  }

  private static String pieces(RunState state) {
    return Integer.toString(state.job().quantity().good());
  }

  private static String late(RunState state) {
    return state.lateMin() == 0 ? "no" : Minutes.words(state.lateMin());
  }

  /** The inserts now; those before as well when they are others. */
  private static List<String> inserts(HandoverRow row) {
    List<String> before = row.before().map(RunState::inserts).orElse(List.of());
    List<String> now = row.now().map(RunState::inserts).orElse(List.of());
    List<String> lines = new ArrayList<>();
    if (!before.equals(now)) {
      before.stream().filter(b -> !now.contains(b)).forEach(b -> lines.add("no longer " + b));
    }
    lines.addAll(now);
    return lines;
  }
}
