package pressweek.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Audit;

/**
 * Measures what plans of drawn plants cost after so many seconds, and writes the part <i>Drawn
 * plants</i> of {@code examples/benchmarks/RESULTS.md}. Run from the project's root; finished runs
 * are kept in {@code examples/target/benchmarks/plants.csv}, so it may be broken off and started
 * again.
 *
 * <pre>
 * {@code java ... pressweek.examples.PlantBenchmark [jobs=N] [seeds=N] [seconds...]}
 * </pre>
 *
 * With {@code jobs} only the plant of so many jobs, with {@code seeds} so many of the search's
 * seeds, 3 if not.
 */
public final class PlantBenchmark {
  private static final System.Logger LOG = System.getLogger(PlantBenchmark.class.getName());
  private static final List<PlantSize> SIZES =
      List.of(
          new PlantSize(120, 12),
          new PlantSize(300, 24),
          new PlantSize(1_000, 60),
          new PlantSize(5_000, 100));
  private static final long PLANT_SEED = 1;
  private static final int SEEDS = 3;

  /** A search that does not count, to warm the process. */
  private static final Settings WARM = new Settings(5, 0, 1);

  private static final List<Integer> SECONDS = List.of(1, 10, 30, 60);

  private final RunTable table;
  private final Path results;

  PlantBenchmark(Path rows, Path results) throws IOException {
    this.results = results;
    table =
        RunTable.open(
            rows,
            List.of("jobs", "presses", "seconds", "seed"),
            List.of("cost", "edd", "atcs", "unplaced", "late", "heap_mb", "findings", "took_s"));
  }

  /** Runs what is not finished yet. */
  public static void main(String[] args) throws IOException {
    int jobs = value(args, "jobs=").orElse(0);
    int seeds = value(args, "seeds=").orElse(SEEDS);
    List<Integer> given =
        Arrays.stream(args).filter(a -> !a.contains("=")).map(Integer::valueOf).distinct().toList();
    List<Integer> seconds = given.isEmpty() ? SECONDS : given;
    List<PlantSize> sizes = SIZES.stream().filter(s -> jobs == 0 || s.jobs() == jobs).toList();
    Head head = new Head("1", "", 0, Map.of(), WARM, List.of(), false);
    new Planner(DrawnProblem.draw(SIZES.get(0), PLANT_SEED))
        .plan(head, Optional.empty(), Watcher.NONE);
    new PlantBenchmark(
            Path.of("examples", "target", "benchmarks", "plants.csv"),
            Path.of("examples", "benchmarks", "RESULTS.md"))
        .run(sizes, seconds, LongStream.rangeClosed(1, seeds).boxed().toList());
  }

  private static Optional<Integer> value(String[] args, String name) {
    return Arrays.stream(args)
        .filter(a -> a.startsWith(name))
        .map(a -> Integer.valueOf(a.substring(name.length())))
        .findFirst();
  }

  /** Runs what is not finished yet, and writes the part after each run. */
  void run(List<PlantSize> sizes, List<Integer> seconds, List<Long> seeds) throws IOException {
    for (PlantSize size : sizes) {
      Optional<Problem> problem = Optional.empty();
      for (int limit : seconds) {
        for (long seed : seeds) {
          if (!table.isDone(size.jobs(), size.presses(), limit, seed)) {
            if (problem.isEmpty()) {
              problem = Optional.of(DrawnProblem.draw(size, PLANT_SEED));
            }
            measure(size, problem.get(), new Settings(limit, 0, seed));
            write();
          }
        }
      }
    }
    write();
  }

  private void measure(PlantSize size, Problem problem, Settings settings) throws IOException {
    Head head = new Head("1", "", 0, Map.of(), settings, List.of(), false);
    long begun = System.nanoTime();
    Plan plan = new Planner(problem).plan(head, Optional.empty(), Watcher.NONE);
    double took = Math.round((System.nanoTime() - begun) / 1e7) / 100.0;
    Runtime runtime = Runtime.getRuntime();
    long heap = (runtime.totalMemory() - runtime.freeMemory()) / 1_048_576;
    List<Reference> references = plan.head().references();
    table.add(
        size.jobs(),
        size.presses(),
        settings.seconds(),
        settings.seed(),
        plan.figures().avoidableCost(),
        references.get(0).avoidableCost(),
        references.get(1).avoidableCost(),
        plan.figures().unplacedLines() - problem.unplaced().size(),
        plan.figures().lateLines(),
        heap,
        Audit.check(problem, plan).size(),
        took);
    LOG.log(
        System.Logger.Level.INFO,
        "{0} x {1}, {2}",
        String.valueOf(size.jobs()),
        size.presses(),
        settings);
  }

  private void write() throws IOException {
    PlantPart part = new PlantPart(table);
    new ResultsFile(results).replace(PlantPart.HEADING, part.lines());
    Files.writeString(results.resolveSibling(PlantPart.PICTURE), part.picture());
  }
}
