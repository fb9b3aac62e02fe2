package pressweek.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pressweek.examples.RunTable.Row;

/** What {@link PlantBenchmark} found: a table, and a picture of the cost over the seconds. */
final class PlantPart {
  static final String HEADING = "Drawn plants";
  static final String PICTURE = "plants.svg";

  private final RunTable table;

  PlantPart(RunTable table) {
    this.table = table;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>(table.machines(PlantBenchmark.class));
    lines.add("");
    lines.add(
        "Plants of `PlantGenerator`, seed 1; each search from the start, mean of the search's seeds "
            + String.join(", ", table.distinct("seed"))
            + " (lowest and highest in brackets). EDD is earliest due date first, ATCS the best of the grid of setup-aware"
            + " dispatch; heap is what was in use after the plan, garbage not collected.");
    lines.add("");
    lines.add(
        "| jobs | presses | seconds | seeds | avoidable cost | against EDD | against ATCS | late | left out | heap MB, most"
            + " | audit findings | seconds taken |");
    lines.add("|---".repeat(12) + "|");
    for (int jobs : table.numbers("jobs")) {
      for (int seconds : table.numbers("seconds")) {
        List<Row> rows = rows(jobs, seconds);
        if (!rows.isEmpty()) {
          lines.add(line(rows));
        }
      }
    }
    lines.add("");
    lines.add("![Cost over seconds](" + PICTURE + ")");
    return lines;
  }

  private List<Row> rows(int jobs, int seconds) {
    return table.rows(r -> r.has("jobs", jobs) && r.has("seconds", seconds));
  }

  private static String line(List<Row> rows) {
    double cost = mean(rows, "cost");
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %d | %,.0f (%,.0f to %,.0f) | %+.1f %% | %+.1f %% | %.0f | %.1f | %.0f | %.0f | %.1f |",
        rows.get(0).text("jobs"),
        rows.get(0).text("presses"),
        rows.get(0).text("seconds"),
        rows.size(),
        cost / 1e5,
        rows.stream().mapToDouble(r -> r.number("cost")).min().orElse(0) / 1e5,
        most(rows, "cost") / 1e5,
        100 * (cost / mean(rows, "edd") - 1),
        100 * (cost / mean(rows, "atcs") - 1),
        mean(rows, "late"),
        mean(rows, "unplaced"),
        most(rows, "heap_mb"),
        rows.stream().mapToDouble(r -> r.number("findings")).sum(),
        mean(rows, "took_s"));
  }

  /** The picture: cost as a share of that of ATCS, since plants differ by orders of magnitude. */
  String picture() {
    Curves curves = new Curves("Avoidable cost, dispatch by ATCS being 100", "percent");
    for (int jobs : table.numbers("jobs")) {
      for (int seconds : table.numbers("seconds")) {
        List<Row> rows = rows(jobs, seconds);
        if (!rows.isEmpty()) {
          String name = jobs + " jobs, " + rows.get(0).text("presses") + " presses";
          curves.add(name, seconds, 100 * mean(rows, "cost") / mean(rows, "atcs"));
        }
      }
    }
    return curves.svg();
  }

  private static double mean(List<Row> rows, String column) {
    return rows.stream().mapToDouble(r -> r.number(column)).average().orElse(0);
  }

  private static double most(List<Row> rows, String column) {
    return rows.stream().mapToDouble(r -> r.number(column)).max().orElse(0);
  }
}
