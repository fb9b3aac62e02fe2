package pressweek.reports.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Run;
import pressweek.data.problem.Setup;
import pressweek.reports.changes.ChangeRow;
import pressweek.reports.changes.ChangeWork;
import pressweek.reports.changes.ChangeWorkReport;
import pressweek.reports.hours.Minutes;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;

/** The change list in order of time, by the setters' shift. */
final class ChangeSheet {
  private static final List<Integer> WIDTHS = List.of(9, 5, 10, 13, 13, 9, 9, 22, 24, 9);

  private final PlanBook book;
  private final PlantClock clock;

  ChangeSheet(PlanBook book) {
    this.book = book;
    this.clock = book.clock();
  }

  /** The table. */
  List<Element> content() {
    List<ChangeWork> rows = ChangeWorkReport.rows(book);
    if (rows.isEmpty()) {
      return List.of(Element.of("p").text("Nothing has to be changed."));
    }
    PageTable<ChangeWork> table =
        new PageTable<ChangeWork>("setters")
            .ticks("done")
            .widths(WIDTHS)
            .lines("from, to", this::times)
            .key("press", r -> r.change().press())
            .lines("what", ChangeSheet::what)
            .lines("mold, tooling off", ChangeSheet::out)
            .lines("mold, tooling on", ChangeSheet::in)
            .cell("material out", r -> material(r.change().materialOut(), from(r)))
            .cell("material in", r -> material(r.change().materialIn(), to(r)))
            .lines("while the press runs", r -> r.tasks().before())
            .lines("press stopped", r -> r.tasks().stopped())
            .pair("for line, stays", this::line, r -> String.join(", ", r.change().stays()));
    byShift(rows).forEach(table::group);
    return List.of(table.element());
  }

  private static Map<String, List<ChangeWork>> byShift(List<ChangeWork> rows) {
    Map<String, List<ChangeWork>> shifts = new LinkedHashMap<>();
    for (ChangeWork row : rows) {
      String shift = row.change().shift().map(ShiftSpan::heading).orElse("Outside all shifts");
      shifts.computeIfAbsent(shift, s -> new ArrayList<>()).add(row);
    }
    return shifts;
  }

  private List<String> times(ChangeWork row) {
    ChangeRow change = row.change();
    return List.of(
        clock.brief(change.span().fromMin()) + " \u2013",
        clock.brief(change.span().toMin()),
        Minutes.hours(change.minutes()));
  }

  /** What is changed, and a mark when others are changed at the same time. */
  private static List<String> what(ChangeWork row) {
    List<String> lines = new ArrayList<>(row.change().kinds());
    if (row.atOnce().most() > 1) {
      String with = String.join(", ", row.atOnce().presses());
      lines.add("\u25cf %d at once, with %s".formatted(row.atOnce().most(), with));
    }
    return lines;
  }

  private static List<String> out(ChangeWork row) {
    return mold(row.change().moldOut(), row.change().toolingOut(), row.out());
  }

  private static List<String> in(ChangeWork row) {
    return mold(row.change().moldIn(), row.change().toolingIn(), row.in());
  }

  private static List<String> mold(String mold, String tooling, ChangeWork.MoldMove move) {
    List<String> lines = new ArrayList<>();
    if (!mold.isEmpty()) {
      lines.add(move.words(mold));
    }
    if (!tooling.isEmpty()) {
      lines.add(tooling);
    }
    lines.addAll(move.places());
    return lines;
  }

  private Element material(String changed, Setup setup) {
    return changed.isEmpty() ? Element.of("td") : Material.of(book, setup.resin(), setup.colour());
  }

  private static Setup from(ChangeWork row) {
    return row.change().setups().from();
  }

  private static Setup to(ChangeWork row) {
    return row.change().setups().to();
  }

  private String line(ChangeWork row) {
    return book.run(row.change().run()).map(Run::job).orElse("");
  }
}
