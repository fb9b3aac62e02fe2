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
  private static final List<Integer> WIDTHS_WITH_PEOPLE = List.of(11, 15, 20, 15, 14, 24, 24, 9);

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
    boolean people = book.plan().problem().plant().crew().people().isPresent();
    Map<String, List<CrewRow>> shifts = new LinkedHashMap<>();
    for (CrewRow row : rows) {
      shifts.computeIfAbsent(row.shift().heading(), s -> new ArrayList<>()).add(row);
    }
    PageTable<CrewRow> table =
        new PageTable<CrewRow>("crew")
            .widths(people ? WIDTHS_WITH_PEOPLE : WIDTHS)
            .key("cell", CrewRow::cell)
            .lines("operators at most", this::operators)
            .text("at presses, people each", r -> String.join(", ", r.operators().presses()))
            .text("share an operator", r -> String.join(", ", r.operators().sharing()))
            .lines("setters", CrewSheet::setters);
    if (people) {
      table.lines("who may run what", r -> mayRun(r, shifts));
    }
    table.lines("too few", CrewRow::shortages).lines("not worked out", CrewRow::notComputed);
    shifts.forEach(table::group);
    return List.of(table.element());
  }

  /** Where cells have rows of their own, people stand in those, and not once more above them. */
  private static List<String> mayRun(CrewRow row, Map<String, List<CrewRow>> shifts) {
    boolean inCells =
        row.cell().equals(CrewRow.WHOLE)
            && shifts.getOrDefault(row.shift().heading(), List.of()).size() > 1;
    List<String> lines = new ArrayList<>(inCells ? List.of() : row.qualified().mayRun());
    if (!row.qualified().nobodyFor().isEmpty()) {
      lines.add("nobody: " + String.join(", ", row.qualified().nobodyFor()));
    }
    return lines;
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
