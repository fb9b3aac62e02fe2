package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Change;
import pressweek.data.problem.Press;
import pressweek.reports.hours.Minutes;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.markup.Anchor;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.Kinds;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.Reasons;
import pressweek.reports.schedule.ScheduleReport;
import pressweek.reports.schedule.ScheduleRow;

/** The schedule by press. */
final class ScheduleSheet {
  private final PlanBook book;
  private final PlantClock clock;

  ScheduleSheet(PlanBook book) {
    this.book = book;
    this.clock = book.clock();
  }

  /** The table, and which presses have no run. */
  List<Element> content() {
    List<String> idle = new ArrayList<>();
    PageTable<ScheduleRow> table = table();
    for (Press press : book.presses()) {
      List<ScheduleRow> rows =
          book.runsOn(press).stream().map(r -> ScheduleReport.row(book, r)).toList();
      if (rows.isEmpty()) {
        idle.add(press.id());
      } else {
        table.group(heading(press), rows, r -> Anchor.run(r.run().id()));
      }
    }
    List<Element> parts = new ArrayList<>();
    if (idle.size() < book.presses().size()) {
      parts.add(table.element());
    }
    if (!idle.isEmpty()) {
      parts.add(Element.of("p").text("Without a run: " + String.join(", ", idle) + "."));
    }
    return parts;
  }

  private static String heading(Press press) {
    List<String> words = new ArrayList<>(Kinds.words(press));
    words.add(Kinds.food(press));
    words.add(press.cell().isBlank() ? "" : "cell " + press.cell());
    words.removeIf(String::isBlank);
    return "Press " + press.id() + ": " + String.join(", ", words);
  }

  private PageTable<ScheduleRow> table() {
    return new PageTable<ScheduleRow>("schedule")
        .text("run", r -> r.run().id())
        .cell("change before", r -> change(r.run().change()))
        .lines("from, to", this::times)
        .key("line", r -> r.job().id())
        .pair("item", r -> r.job().item().code(), r -> r.job().line().customer())
        .text("mold", r -> r.run().mold())
        .cell("material", r -> Material.of(book, r.job().resin(), r.job().colour()))
        .lines("inserts", ScheduleRow::inserts)
        .pair("pieces", r -> Integer.toString(r.job().quantity().good()), r -> r.shots() + " shots")
        .text("due", r -> clock.brief(r.job().deadline().dueMin()))
        .lines("remarks", ScheduleSheet::remarks);
  }

  private List<String> times(ScheduleRow row) {
    return List.of(clock.brief(row.run().startMin()) + " \u2013", clock.brief(row.run().endMin()));
  }

  private static Element change(Change change) {
    if (change.kinds().isEmpty()) {
      return Element.of("td", "muted").text("none");
    }
    String kinds = String.join(", ", change.kinds().stream().map(Kinds::words).toList());
    return Element.of("td")
        .add("div", Minutes.hours(change.minutes()))
        .add(Element.of("div", "muted").text(kinds));
  }

  private static List<String> remarks(ScheduleRow row) {
    List<String> remarks = new ArrayList<>();
    remarks.add(row.stay().word());
    remarks.add(row.job().foodGrade() ? "food-grade" : "");
    remarks.add(row.lateMin() == 0 ? "" : Minutes.words(row.lateMin()) + " late");
    remarks.addAll(Reasons.remarks(row.run()));
    remarks.add(row.job().line().note());
    remarks.removeIf(String::isBlank);
    return remarks;
  }
}
