package pressweek.examples.published;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.examples.ResultsFile;
import pressweek.examples.RunTable;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;

/**
 * Measures how near the planner comes to the best known values of the cases of {@link
 * TardinessCase}, and writes the part <i>Published: weighted tardiness</i> of {@code
 * examples/benchmarks/RESULTS.md}. Run from the project's root; finished runs are kept in {@code
 * examples/target/benchmarks/tardiness.csv}, so it may be broken off and started again.
 *
 * <pre>
 * {@code java ... pressweek.examples.published.TardinessBenchmark BENCH_FOLDER [from-to] [seconds...]}
 * </pre>
 *
 * With {@code from-to} only the cases of these numbers, as {@code 41-80}.
 *
 * <p>The folder has {@code wtsds/wt_sds_N.instance} and {@code wtsds/best_known.csv} with the
 * columns {@code instance}, {@code literature_recalled} and {@code match}.
 */
public final class TardinessBenchmark {
  private static final System.Logger LOG = System.getLogger(TardinessBenchmark.class.getName());
  private static final long SEED = 1;

  /** Seconds of a run that does not count, to warm the process. */
  private static final int WARM_SECONDS = 3;

  private static final List<Integer> SECONDS = List.of(1, 10, 60);

  private final List<PublishedValue> known;
  private final RunTable table;
  private final Path results;

  /**
   * What came of a run.
   *
   * @param value weighted tardiness found
   * @param atcs weighted tardiness by the setup-aware dispatch rule
   */
  record Outcome(double value, double atcs) {}

  /** Plans a case. */
  @FunctionalInterface
  interface Run {
    /** Plans the case of a number within so many seconds. */
    Outcome of(PublishedValue known, int seconds) throws IOException;
  }

  /**
   * A benchmark.
   *
   * @param known cases with their values
   * @param rows where the finished runs are kept
   * @param results the page of results; the picture is written beside it
   */
  TardinessBenchmark(List<PublishedValue> known, Path rows, Path results) throws IOException {
    this.known = List.copyOf(known);
    this.results = results;
    table =
        RunTable.open(rows, List.of("case", "seconds", "seed"), List.of("value", "atcs", "took_s"));
  }

  /** Runs what is not finished yet. */
  public static void main(String[] args) throws IOException {
    if (args.length == 0) {
      throw new IllegalArgumentException("expected BENCH_FOLDER [seconds...]");
    }
    Path folder = Path.of(args[0], "wtsds");
    List<Integer> given =
        Arrays.stream(args)
            .skip(1)
            .filter(a -> !a.contains("-"))
            .map(Integer::valueOf)
            .distinct()
            .toList();
    List<Integer> seconds = given.isEmpty() ? SECONDS : given;
    List<PublishedValue> known = values(folder);
    List<PublishedValue> chosen = known;
    for (String arg : Arrays.copyOfRange(args, 1, args.length)) {
      if (arg.contains("-")) {
        int from = Integer.parseInt(arg.substring(0, arg.indexOf('-')));
        int to = Integer.parseInt(arg.substring(arg.indexOf('-') + 1));
        chosen = known.stream().filter(v -> number(v) >= from && number(v) <= to).toList();
      }
    }
    planned(folder, known.get(0), WARM_SECONDS);
    new TardinessBenchmark(
            known,
            Path.of("examples", "target", "benchmarks", "tardiness.csv"),
            Path.of("examples", "benchmarks", "RESULTS.md"))
        .run(chosen, seconds, (value, limit) -> planned(folder, value, limit));
  }

  private static int number(PublishedValue value) {
    return Integer.parseInt(value.name());
  }

  /** The known values of a folder. */
  static List<PublishedValue> values(Path folder) throws IOException {
    return PublishedValue.read(folder.resolve("best_known.csv"), "instance", "literature_recalled");
  }

  /** Runs what is not finished yet, and writes the part after each run. */
  void run(List<Integer> seconds, Run run) throws IOException {
    run(known, seconds, run);
  }

  private void run(List<PublishedValue> chosen, List<Integer> seconds, Run run) throws IOException {
    for (int limit : seconds) {
      for (PublishedValue value : chosen) {
        if (!table.isDone(value.name(), limit, SEED)) {
          long begun = System.nanoTime();
          Outcome found = run.of(value, limit);
          double took = Math.round((System.nanoTime() - begun) / 1e7) / 100.0;
          table.add(value.name(), limit, SEED, found.value(), found.atcs(), took);
          LOG.log(System.Logger.Level.INFO, "{0}, {1} s: {2}", value.name(), limit, found.value());
          write();
        }
      }
    }
    write();
  }

  private void write() throws IOException {
    new TardinessPart(known, table).write(new ResultsFile(results), results);
  }

  private static Outcome planned(Path folder, PublishedValue known, int seconds)
      throws IOException {
    Problem problem =
        TardinessCase.read(folder.resolve("wt_sds_" + known.name() + ".instance")).problem();
    Settings settings = new Settings(seconds, 0, SEED);
    Head head = new Head("1", "", 0, Map.of(), settings, List.of(), false);
    Plan plan = new Planner(problem).plan(head, Optional.empty(), Watcher.NONE);
    long cost = plan.figures().avoidableCost();
    if (cost != tardiness(plan) * RoundTheClock.UNIT) {
      throw new IllegalStateException(
          "case " + known.name() + " costs " + cost + " but its runs " + tardiness(plan));
    }
    Reference atcs = plan.head().references().get(1);
    return new Outcome(
        cost / (double) RoundTheClock.UNIT, atcs.avoidableCost() / (double) RoundTheClock.UNIT);
  }

  /** Weighted tardiness by the runs' ends, to hold the cost against. */
  private static long tardiness(Plan plan) {
    long sum = 0;
    for (pressweek.data.plan.Run run : plan.runs()) {
      Job job =
          plan.problem().jobs().stream()
              .filter(j -> j.id().equals(run.job()))
              .findFirst()
              .orElseThrow();
      int late = Math.max(0, run.endMin() - job.deadline().dueMin());
      sum += (long) late * (job.deadline().weightHundredths() / 100);
    }
    return sum;
  }
}
