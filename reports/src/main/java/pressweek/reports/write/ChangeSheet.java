package pressweek.reports.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Run;
import pressweek.data.problem.Setup;
import pressweek.reports.changes.ChangeReport;
import pressweek.reports.changes.ChangeRow;
import pressweek.reports.hours.Minutes;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.PlanBook;

/** The change list in order of time, by the setters' shift. */
final class ChangeSheet {
  private final PlanBook book;
  private final PlantClock clock;

  ChangeSheet(PlanBook book) {
    this.book = book;
    this.clock = book.clock();
  }

  /** The table. */
  List<Element> content() {
    List<ChangeRow> rows = ChangeReport.rows(book);
    if (rows.isEmpty()) {
      return List.of(Element.of("p").text("Nothing has to be changed."));
    }
    PageTable<ChangeRow> table =
        new PageTable<ChangeRow>("changes")
            .ticks("done")
            .lines("from, to", this::times)
            .figure("takes", r -> Minutes.hours(r.minutes()))
            .key("press", ChangeRow::press)
            .text("what", r -> String.join(", ", r.kinds()))
            .pair("mold, tooling off", ChangeRow::moldOut, ChangeRow::toolingOut)
            .pair("mold, tooling on", ChangeRow::moldIn, ChangeRow::toolingIn)
            .cell("material out", r -> material(r.materialOut(), r.setups().from()))
            .cell("material in", r -> material(r.materialIn(), r.setups().to()))
            .figure("purge", r -> r.purgeG() == 0 ? "" : Headline.kilograms(r.purgeG()))
            .text("stays", r -> String.join(", ", r.stays()))
            .text("for line", this::line);
    byShift(rows).forEach((shift, its) -> table.group(shift, its));
    return List.of(table.element());
  }

  private static Map<String, List<ChangeRow>> byShift(List<ChangeRow> rows) {
    Map<String, List<ChangeRow>> shifts = new LinkedHashMap<>();
    for (ChangeRow row : rows) {
      String shift = row.shift().map(ShiftSpan::heading).orElse("Outside all shifts");
      shifts.computeIfAbsent(shift, s -> new ArrayList<>()).add(row);
    }
    return shifts;
  }

  private List<String> times(ChangeRow row) {
    return List.of(clock.brief(row.span().fromMin()) + " \u2013", clock.brief(row.span().toMin()));
  }

  private Element material(String changed, Setup setup) {
    return changed.isEmpty() ? Element.of("td") : Material.of(book, setup.resin(), setup.colour());
  }

  private String line(ChangeRow row) {
    return book.run(row.run()).map(Run::job).orElse("");
  }
}
