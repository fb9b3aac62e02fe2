package pressweek.examples.published;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pressweek.examples.RunTable;
import pressweek.examples.RunTable.Row;

/** What {@link MakespanBenchmark} found, as lines of the page of results. */
final class MakespanPart {
  static final String HEADING = "Published: makespan";

  private final RunTable table;
  private final int cases;
  private final List<String> lines = new ArrayList<>();

  /** The part of a table, of so many cases in all. */
  MakespanPart(RunTable table, int cases) {
    this.table = table;
    this.cases = cases;
  }

  List<String> lines() {
    lines.addAll(table.machines(MakespanBenchmark.class));
    lines.add("");
    lines.add(
        "Small cases of E. Vallada and R. Ruiz (European Journal of Operational Research 211 (2011) 612-622): unrelated"
            + " machines, setups by machine and sequence, end of the last job; planned as a week on so many presses;"
            + " jobs x machines / 2 x 50 ms, the process warmed before; seed "
            + String.join(", ", table.distinct("seed"))
            + ".");
    lines.add(
        String.format(
            Locale.ROOT,
            "%d of %d cases whose file is at hand (published: 640).",
            table.rows().size(),
            cases));
    lines.add("");
    lines.add("| jobs | machines | cases | at or below published | below | mean gap | ms, mean |");
    lines.add("|---|---|---|---|---|---|---|");
    for (int jobs : table.numbers("jobs")) {
      for (int machines : table.numbers("machines")) {
        row(
            String.valueOf(jobs),
            String.valueOf(machines),
            table.rows(r -> r.has("jobs", jobs) && r.has("machines", machines)));
      }
    }
    row("all", "", table.rows());
    lines.add("");
    lines.add(
        "For comparison, mean gaps over all 640 cases in the same time, on other machines: GA2 0.36 %, EDA-IG -0.01 %"
            + " (L. Wang, S. Wang, X. Zheng, IEEE/CAA Journal of Automatica Sinica 3 (2016) 235-246).");
    return lines;
  }

  private void row(String jobs, String machines, List<Row> rows) {
    if (rows.isEmpty()) {
      return;
    }
    long below = rows.stream().filter(r -> r.number("value") < r.number("published")).count();
    long above = rows.stream().filter(r -> r.number("value") > r.number("published")).count();
    lines.add(
        String.format(
            Locale.ROOT,
            "| %s | %s | %d | %.1f %% | %d | %.2f %% | %,.0f |",
            jobs,
            machines,
            rows.size(),
            100.0 - 100.0 * above / rows.size(),
            below,
            rows.stream().mapToDouble(MakespanPart::gap).average().orElse(0),
            rows.stream().mapToDouble(r -> r.number("took_ms")).average().orElse(0)));
  }

  private static double gap(Row row) {
    return 100 * (row.number("value") / row.number("published") - 1);
  }
}
