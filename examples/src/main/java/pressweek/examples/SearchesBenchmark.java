package pressweek.examples;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.examples.RunTable.Row;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;

/**
 * Measures what a second search beside the first, on a second core, brings in the same time, and
 * writes the part <i>Two searches against one</i> of {@code examples/benchmarks/RESULTS.md}. Run
 * from the project's root; finished runs are kept in {@code
 * examples/target/benchmarks/searches.csv}, so it may be broken off and started again.
 *
 * <pre>
 * {@code java ... pressweek.examples.SearchesBenchmark [seconds]}
 * </pre>
 */
public final class SearchesBenchmark {
  static final String HEADING = "Two searches against one";

  private static final System.Logger LOG = System.getLogger(SearchesBenchmark.class.getName());
  private static final int SECONDS = 3;
  private static final PlantSize SIZE = new PlantSize(120, 12);

  private final RunTable table;
  private final Path results;

  SearchesBenchmark(Path rows, Path results) throws IOException {
    this.results = results;
    table = RunTable.open(rows, List.of("plant", "searches", "seconds", "seed"), List.of("cost"));
  }

  /** Runs what is not finished yet. */
  public static void main(String[] args) throws IOException {
    int seconds = args.length == 0 ? SECONDS : Integer.parseInt(args[0]);
    cost(DrawnProblem.draw(SIZE, 0), 2, new Settings(SECONDS, 0, 1));
    new SearchesBenchmark(
            Path.of("examples", "target", "benchmarks", "searches.csv"),
            Path.of("examples", "benchmarks", "RESULTS.md"))
        .run(SIZE, 10, 5, seconds);
  }

  /** Runs what is not finished yet, and writes the part after each plant. */
  void run(PlantSize size, int plants, int seeds, int seconds) throws IOException {
    for (int plant = 1; plant <= plants; plant++) {
      Problem problem = DrawnProblem.draw(size, plant);
      for (int seed = 1; seed <= seeds; seed++) {
        for (int searches = 1; searches <= 2; searches++) {
          if (!table.isDone(plant, searches, seconds, seed)) {
            long cost = cost(problem, searches, new Settings(seconds, 0, seed));
            table.add(plant, searches, seconds, seed, cost);
          }
        }
      }
      LOG.log(System.Logger.Level.INFO, "plant {0}", plant);
      new ResultsFile(results).replace(HEADING, lines(size));
    }
  }

  private static long cost(Problem problem, int searches, Settings settings) {
    Head head = new Head("1", "", 0, Map.of(), settings, List.of(), false);
    Planner planner = new Planner(problem);
    planner.searches(searches);
    Plan plan = planner.plan(head, Optional.empty(), Watcher.NONE);
    return plan.figures().avoidableCost();
  }

  private List<String> lines(PlantSize size) {
    List<String> lines = new ArrayList<>(table.machines(SearchesBenchmark.class));
    lines.add("");
    lines.add(
        String.format(
            Locale.ROOT,
            "Drawn plants of %d jobs on %d presses, planned in the same time by one search and by two side by side, seeds %s each; avoidable cost, means.",
            size.jobs(),
            size.presses(),
            String.join(", ", table.distinct("seed"))));
    lines.add("");
    lines.add("| plant | seconds | one | two | two against one | two is lower in |");
    lines.add("|---".repeat(6) + "|");
    for (int seconds : table.numbers("seconds")) {
      for (int plant : table.numbers("plant")) {
        lines.add(line(String.valueOf(plant), seconds, rows(plant, seconds)));
      }
      lines.add(line("all", seconds, table.rows(r -> r.has("seconds", seconds))));
    }
    return lines;
  }

  private List<Row> rows(int plant, int seconds) {
    return table.rows(r -> r.has("plant", plant) && r.has("seconds", seconds));
  }

  private static String line(String plant, int seconds, List<Row> rows) {
    double[] sum = new double[2];
    double ratios = 0;
    int lower = 0;
    int pairs = 0;
    for (Row one : rows.stream().filter(r -> r.has("searches", 1)).toList()) {
      for (Row two : rows) {
        if (two.has("searches", 2) && same(one, two, "plant") && same(one, two, "seed")) {
          sum[0] += one.number("cost");
          sum[1] += two.number("cost");
          ratios += two.number("cost") / one.number("cost");
          lower += two.number("cost") < one.number("cost") ? 1 : 0;
          pairs++;
        }
      }
    }
    return String.format(
        Locale.ROOT,
        "| %s | %d | %,.0f | %,.0f | %+.1f %% | %d of %d |",
        plant,
        seconds,
        sum[0] / 1e5 / pairs,
        sum[1] / 1e5 / pairs,
        100 * (ratios / pairs - 1),
        lower,
        pairs);
  }

  private static boolean same(Row one, Row two, String column) {
    return one.text(column).equals(two.text(column));
  }
}
