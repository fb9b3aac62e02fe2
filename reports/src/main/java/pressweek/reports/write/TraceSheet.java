package pressweek.reports.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Run;
import pressweek.data.problem.Declaration;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.trace.TraceReport;
import pressweek.reports.trace.TraceRow;

/** The lots of every run that asks for declarations, with room for what was used and by whom. */
final class TraceSheet {
  private static final List<String> SIGN =
      List.of("operator", "first article no. and by", "lot released by");
  private static final List<Integer> WIDTHS = List.of(16, 14, 14, 17, 7, 25, 12);

  private final PlanBook book;
  private final PlantClock clock;

  TraceSheet(PlanBook book) {
    this.book = book;
    this.clock = book.clock();
  }

  /** A card a run; nothing when none asks for declarations. */
  List<Element> content() {
    Map<Run, List<TraceRow>> runs = new LinkedHashMap<>();
    for (TraceRow row : TraceReport.rows(book)) {
      runs.computeIfAbsent(row.run(), r -> new ArrayList<>()).add(row);
    }
    List<Element> cards = new ArrayList<>();
    runs.forEach((run, rows) -> cards.add(card(run, rows)));
    return cards;
  }

  private Element card(Run run, List<TraceRow> rows) {
    String made =
        "line "
            + book.job(run).id()
            + ", "
            + book.job(run).line().item()
            + ", mold "
            + run.mold()
            + ", "
            + clock.span(run.startMin(), run.endMin());
    return Element.of("section", "card")
        .add("h3", run.id() + " on " + run.press())
        .add("p", made)
        .add(table(rows))
        .add(Signatures.of(SIGN));
  }

  private Element table(List<TraceRow> rows) {
    return new PageTable<TraceRow>("trace")
        .text("material", r -> r.subject().words())
        .pair("planned lot", r -> r.source().lot(), r -> r.source().bin())
        .text("lot used", r -> "")
        .pair("paper of the lot", r -> r.source().paper(), r -> r.source().note())
        .text("need", TraceRow::need)
        .pair(
            "record",
            r -> r.declaration().map(TraceSheet::paper).orElse("none in this plan"),
            r -> r.declaration().map(Declaration::source).orElse(""))
        .text("valid to", r -> r.declaration().map(this::expires).orElse(""))
        .widths(WIDTHS)
        .rows(rows)
        .element();
  }

  private static String paper(Declaration declaration) {
    String exemption =
        declaration.exemption().isEmpty() ? "" : "exemption " + declaration.exemption();
    return declaration.certificate().isEmpty() || exemption.isEmpty()
        ? declaration.certificate() + exemption
        : declaration.certificate() + ", " + exemption;
  }

  private String expires(Declaration declaration) {
    return declaration.expiresMin().isPresent()
        ? clock.iso(declaration.expiresMin().getAsInt()).substring(0, "2026-11-30".length())
        : "no end";
  }
}
