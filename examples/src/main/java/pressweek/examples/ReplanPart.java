package pressweek.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pressweek.examples.ReplanBenchmark.Way;
import pressweek.examples.RunTable.Row;

/** What {@link ReplanBenchmark} found, as lines of the page of results. */
final class ReplanPart {
  static final String HEADING = "After a press is lost";

  private final RunTable table;

  ReplanPart(RunTable table) {
    this.table = table;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>(table.machines(ReplanBenchmark.class));
    lines.add("");
    lines.add(
        "The demo week planned in 20 s; then, each alone, a press that works is lost for a day at a drawn time (seed "
            + String.join(", ", table.distinct("seed"))
            + ") and the rest of the week is planned in 5 s: as `replan` does, from scratch, and from scratch with moves"
            + " free. Moved: runs on another press, or earlier or later by more than the plant's tolerance (rule MOVED).");
    lines.add("");
    lines.add(
        "| means of "
            + table.numbers("event").size()
            + " | moved | of runs | cost without MOVED | late | audit findings | seconds |");
    lines.add("|---".repeat(7) + "|");
    for (Way way : Way.values()) {
      List<Row> rows = table.rows(r -> r.text("way").equals(way.name()));
      lines.add(
          String.format(
              Locale.ROOT,
              "| %s | %.1f | %.1f | %,.2f | %.1f | %.0f | %.1f |",
              word(way),
              mean(rows, "moved"),
              mean(rows, "runs"),
              mean(rows, "cost_rest") / 1e5,
              mean(rows, "late"),
              rows.stream().mapToDouble(r -> r.number("findings")).sum(),
              mean(rows, "took_s")));
    }
    events(lines);
    return lines;
  }

  private void events(List<String> lines) {
    lines.add("");
    lines.add(
        "| event | press | at (UTC) | moved: replan | scratch | moves free | cost without MOVED: replan | scratch | moves free |");
    lines.add("|---".repeat(9) + "|");
    for (int event : table.numbers("event")) {
      List<Row> rows = table.rows(r -> r.has("event", event));
      StringBuilder line = new StringBuilder();
      line.append(
          String.format(
              Locale.ROOT,
              "| %d | %s | %s |",
              event,
              rows.get(0).text("press"),
              rows.get(0).text("at").replaceFirst(":00Z", "")));
      for (Way way : Way.values()) {
        line.append(String.format(Locale.ROOT, " %.0f |", mean(of(rows, way), "moved")));
      }
      for (Way way : Way.values()) {
        line.append(String.format(Locale.ROOT, " %,.2f |", mean(of(rows, way), "cost_rest") / 1e5));
      }
      lines.add(line.toString());
    }
  }

  private static List<Row> of(List<Row> rows, Way way) {
    return rows.stream().filter(r -> r.text("way").equals(way.name())).toList();
  }

  private static String word(Way way) {
    return switch (way) {
      case REPLAN -> "`replan`";
      case SCRATCH -> "from scratch";
      case FREE -> "from scratch, moves free";
    };
  }

  private static double mean(List<Row> rows, String column) {
    return rows.stream().mapToDouble(r -> r.number(column)).average().orElse(0);
  }
}
