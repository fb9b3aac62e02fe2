package pressweek.examples.published;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.examples.ResultsFile;
import pressweek.examples.RunTable;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;

/**
 * Measures how near the planner comes to the published values of the small cases of {@link
 * MakespanCase} in the time that their authors gave, and writes the part <i>Published: makespan</i>
 * of {@code examples/benchmarks/RESULTS.md}. Run from the project's root; finished runs are kept in
 * {@code examples/target/benchmarks/makespan.csv}, so it may be broken off and started again.
 *
 * <pre>
 * {@code java ... pressweek.examples.published.MakespanBenchmark BENCH_FOLDER}
 * </pre>
 *
 * The folder has {@code upmsp-sdst/small/NAME.txt} and {@code upmsp-sdst/bounds_small.csv} with the
 * columns {@code instance} and {@code best_makespan}.
 */
public final class MakespanBenchmark {
  private static final System.Logger LOG = System.getLogger(MakespanBenchmark.class.getName());
  private static final long SEED = 1;

  /** Milliseconds for each job and half machine, as in the paper. */
  private static final int MILLIS = 50;

  /** Cases that are planned before the first that counts, and the seconds each of them gets. */
  private static final int WARM_CASES = 4;

  private static final int WARM_SECONDS = 2;

  private final Path small;
  private final List<PublishedValue> known;
  private final RunTable table;
  private final Path results;

  private MakespanBenchmark(Path folder, Path rows, Path results) throws IOException {
    small = folder.resolve("small");
    known =
        PublishedValue.read(folder.resolve("bounds_small.csv"), "instance", "best_makespan")
            .stream()
            .filter(value -> Files.exists(file(value)))
            .toList();
    if (known.isEmpty()) {
      throw new IOException(small + ": no file of a case that bounds_small.csv names");
    }
    this.results = results;
    table =
        RunTable.open(
            rows,
            List.of("case", "seed"),
            List.of("jobs", "machines", "millis", "value", "published", "took_ms"));
  }

  /** Runs what is not finished yet. */
  public static void main(String[] args) throws IOException {
    if (args.length != 1) {
      throw new IllegalArgumentException("expected BENCH_FOLDER");
    }
    new MakespanBenchmark(
            Path.of(args[0], "upmsp-sdst"),
            Path.of("examples", "target", "benchmarks", "makespan.csv"),
            Path.of("examples", "benchmarks", "RESULTS.md"))
        .run();
  }

  private Path file(PublishedValue value) {
    return small.resolve(value.name() + ".txt");
  }

  private void run() throws IOException {
    List<PublishedValue> left =
        known.stream().filter(value -> !table.isDone(value.name(), SEED)).toList();
    for (PublishedValue value : left.subList(0, Math.min(WARM_CASES, left.size()))) {
      planned(MakespanCase.read(file(value)), WARM_SECONDS * 1000);
    }
    for (PublishedValue value : left) {
      MakespanCase one = MakespanCase.read(file(value));
      int millis = one.jobs() * one.machines() * MILLIS / 2;
      long begun = System.nanoTime();
      int found = makespan(planned(one, millis));
      long took = (System.nanoTime() - begun) / 1_000_000;
      table.add(value.name(), SEED, one.jobs(), one.machines(), millis, found, value.value(), took);
      LOG.log(System.Logger.Level.INFO, "{0}: {1}, {2}", value.name(), found, value.value());
      write();
    }
    write();
  }

  private void write() throws IOException {
    new ResultsFile(results)
        .replace(MakespanPart.HEADING, new MakespanPart(table, known.size()).lines());
  }

  /** Plans until the time is up, reading the tables of the case included. */
  private Plan planned(MakespanCase one, int millis) {
    long begun = System.nanoTime();
    Problem problem = one.problem();
    Planner planner = new Planner(problem);
    long gone = (System.nanoTime() - begun) / 1_000_000;
    planner.within(Math.max(0, millis - gone));
    Settings settings = new Settings((millis + 999) / 1000, 0, SEED);
    Head head = new Head("1", "", 0, Map.of(), settings, List.of(), false);
    Plan plan = planner.plan(head, Optional.empty(), Watcher.NONE);
    if (plan.runs().size() != one.jobs()) {
      throw new IllegalStateException(
          "planned " + plan.runs().size() + " of " + one.jobs() + " jobs");
    }
    return plan;
  }

  private static int makespan(Plan plan) {
    return plan.runs().stream().mapToInt(Run::endMin).max().orElseThrow() - RoundTheClock.START;
  }
}
