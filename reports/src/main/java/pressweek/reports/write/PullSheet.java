package pressweek.reports.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.problem.OrderLine;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.markup.Element;
import pressweek.reports.pulls.PullReport;
import pressweek.reports.pulls.PullRow;
import pressweek.reports.schedule.PlanBook;

/** The pull list by shift and press, with a box to tick a row. */
final class PullSheet {
  private final PlanBook book;

  PullSheet(PlanBook book) {
    this.book = book;
  }

  /** The table, and what was not checked. */
  List<Element> content() {
    List<Element> parts = new ArrayList<>();
    if (!book.plan().problem().materials().stock().checked()) {
      parts.add(
          Element.of("p")
              .text(
                  "Insert stock was not checked: bins and lots are not named, and it is not known"
                      + " whether the inserts are in the house."));
    }
    Map<Optional<ShiftSpan>, List<PullRow>> shifts = PullReport.byShift(book);
    if (shifts.isEmpty()) {
      parts.add(Element.of("p").text("There are no inserts to bring."));
      return parts;
    }
    PageTable<PullRow> table = table();
    shifts.forEach(
        (shift, rows) ->
            table.group(shift.map(ShiftSpan::heading).orElse("Outside all shifts"), rows));
    parts.add(table.element());
    return parts;
  }

  private PageTable<PullRow> table() {
    return new PageTable<PullRow>("pulls")
        .ticks("done")
        .key("press", r -> r.pull().press())
        .text("need by", r -> book.clock().brief(r.pull().needByMin()))
        .key("insert", r -> r.pull().insert())
        .cell("what it is", PullSheet::words)
        .text("bin", r -> r.pull().bin())
        .text("lot", r -> r.pull().lot())
        .figure("pieces", PullSheet::pieces)
        .text("for line", r -> r.line().map(OrderLine::id).orElse(""))
        .text("run", r -> r.pull().run())
        .lines("caution", PullRow::cautions);
  }

  private static String pieces(PullRow row) {
    return row.pull().pieces() + (row.component().weighed() ? " g" : "");
  }

  /** The insert in words, its thread in bold. */
  private static Element words(PullRow row) {
    Element td = Element.of("td");
    int at = row.thread().isEmpty() ? -1 : row.words().indexOf(row.thread());
    if (at < 0) {
      return td.text(row.words());
    }
    return td.text(row.words().substring(0, at))
        .add("b", row.thread())
        .text(row.words().substring(at + row.thread().length()));
  }
}
