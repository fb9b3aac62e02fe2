package pressweek.reports.write;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.markup.Element;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.staging.Batch;
import pressweek.reports.staging.StagingReport;
import pressweek.reports.staging.StagingRow;

/** What each shift loads, with a box to tick a row. */
final class StagingSheet {
  private static final List<Integer> WIDTHS = List.of(9, 5, 8, 10, 10, 15, 15, 30, 18);

  private final PlanBook book;
  private final PlantClock clock;

  StagingSheet(PlanBook book) {
    this.book = book;
    this.clock = book.clock();
  }

  /** The table. */
  List<Element> content() {
    List<StagingRow> rows = StagingReport.rows(book);
    if (rows.isEmpty()) {
      return List.of(Element.of("p").text("There is no resin to load."));
    }
    PageTable<StagingRow> table =
        new PageTable<StagingRow>("staging")
            .ticks("done")
            .widths(WIDTHS)
            .text("need by", r -> clock.brief(r.needByMin()))
            .key("press", r -> r.run().press())
            .pair("run, for line", r -> r.run().id(), r -> r.job().id())
            .cell("resin, colour", r -> Material.of(book, r.job().resin(), r.job().colour()))
            .text("load into", r -> r.drying().where())
            .lines("how much, estimate", r -> amounts(r.batch()))
            .lines("drying, estimate", this::drying)
            .lines("caution", StagingRow::cautions)
            .lines("not worked out", StagingRow::notComputed);
    byShift(rows).forEach(table::group);
    return List.of(table.element());
  }

  private static Map<String, List<StagingRow>> byShift(List<StagingRow> rows) {
    Map<String, List<StagingRow>> shifts = new LinkedHashMap<>();
    for (StagingRow row : rows) {
      String shift = row.shift().map(ShiftSpan::heading).orElse("Outside all shifts");
      shifts.computeIfAbsent(shift, s -> new ArrayList<>()).add(row);
    }
    return shifts;
  }

  /** Resin and masterbatch, then what of both is start-up and purge. */
  private static List<String> amounts(Batch batch) {
    List<String> lines = new ArrayList<>();
    batch.resinG().ifPresent(g -> lines.add(kg(g) + " resin"));
    String name = batch.masterbatch().isEmpty() ? "masterbatch" : batch.masterbatch();
    batch.masterbatchG().filter(g -> g > 0).ifPresent(g -> lines.add(kg(g) + " " + name));
    if (batch.resinG().isEmpty()) {
      batch.plasticG().ifPresent(g -> lines.add(kg(g) + " in all"));
    }
    int extra = batch.startupG().orElse(0) + batch.purgeG();
    if (extra > 0 && batch.plasticG().isPresent()) {
      lines.add("of it " + kg(extra) + " start-up and purge");
    }
    return lines;
  }

  private static String kg(int grams) {
    return BigDecimal.valueOf(grams, 3).toPlainString() + " kg";
  }

  private List<String> drying(StagingRow row) {
    StagingRow.DryingStep drying = row.drying();
    List<String> lines = new ArrayList<>();
    drying.fromMin().ifPresent(m -> lines.add("start by " + clock.brief(m)));
    String celsius = drying.celsius().map(c -> " at " + figure(c) + " C").orElse("");
    drying.hours().ifPresent(h -> lines.add(figure(h) + " h" + celsius));
    Optional<String> hopper = drying.hopperL().map(l -> " of " + figure(l) + " L");
    drying.neededL().ifPresent(l -> lines.add(figure(l) + hopper.orElse(" L") + " hopper"));
    drying.fromMin().ifPresent(m -> lines.add("first shot " + clock.brief(row.run().startMin())));
    return lines;
  }

  private static String figure(BigDecimal value) {
    return value.toPlainString().replaceFirst("\\.0$", "");
  }
}
