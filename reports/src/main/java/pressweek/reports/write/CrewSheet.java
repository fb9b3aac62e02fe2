package pressweek.reports.write;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.reports.crew.CrewReport;
import pressweek.reports.crew.CrewRow;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;

/** Whom each shift needs: the whole plant, then its cells. */
final class CrewSheet {
  private static final List<Integer> WIDTHS = List.of(12, 17, 30, 22, 15, 22, 14);

  private final PlanBook book;
  private final PlantClock clock;

  CrewSheet(PlanBook book) {
    this.book = book;
    this.clock = book.clock();
  }

  /** The table. */
  List<Element> content() {
    List<CrewRow> rows = CrewReport.rows(book);
    if (rows.isEmpty()) {
      return List.of(Element.of("p").text("Nobody is needed."));
    }
    PageTable<CrewRow> table =
        new PageTable<CrewRow>("crew")
            .widths(WIDTHS)
            .key("cell", CrewRow::cell)
            .lines("operators at most", this::operators)
            .text("at presses, people each", r -> String.join(", ", r.operators().presses()))
            .text("share an operator", r -> String.join(", ", r.operators().sharing()))
            .lines("setters", CrewSheet::setters)
            .lines("too few", CrewRow::shortages)
            .lines("not worked out", CrewRow::notComputed);
    Map<String, List<CrewRow>> shifts = new LinkedHashMap<>();
    for (CrewRow row : rows) {
      shifts.computeIfAbsent(row.shift().heading(), s -> new ArrayList<>()).add(row);
    }
    shifts.forEach(table::group);
    return List.of(table.element());
  }

  private List<String> operators(CrewRow row) {
    CrewRow.OperatorNeed need = row.operators();
    List<String> lines = new ArrayList<>();
    lines.add(need.people() == 1 ? "1 person" : need.people() + " people");
    need.atMin().ifPresent(m -> lines.add(people(need.thousandths()) + " from " + clock.brief(m)));
    need.thereThousandths().ifPresent(t -> lines.add(people(t) + " there"));
    return lines;
  }

  private static List<String> setters(CrewRow row) {
    List<String> lines = new ArrayList<>();
    lines.add(row.setters().minutes() + " min needed");
    row.setters().availableMin().ifPresent(m -> lines.add(m + " min of " + there(row)));
    return lines;
  }

  private static String there(CrewRow row) {
    int there = row.setters().there().orElse(0);
    return there == 1 ? "1 setter" : there + " setters";
  }

  private static String people(int thousandths) {
    return BigDecimal.valueOf(thousandths, 3).toPlainString();
  }
}
