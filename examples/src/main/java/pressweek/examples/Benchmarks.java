package pressweek.examples;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pressweek.data.files.FolderReader;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Reference;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.data.week.Week;
import pressweek.solver.Planner;
import pressweek.solver.audit.Audit;

/**
 * Measures the planner and writes {@code examples/benchmarks/RESULTS.md}: the demo week against the
 * simple ways of planning, and the time to the first plan of large plants. Run from the project's
 * root; give heap limits to the JVM that runs it.
 */
public final class Benchmarks {
  private static final int SECONDS = 20;
  private static final long[] SEEDS = {1, 2, 3};

  private final List<String> lines = new ArrayList<>();
  private final PrintStream log;

  private Benchmarks(PrintStream log) {
    this.log = log;
  }

  /** Runs all and writes the results to the file named, or to its usual place. */
  public static void main(String[] args) throws IOException {
    Path results = Path.of(args.length > 0 ? args[0] : "examples/benchmarks/RESULTS.md");
    Benchmarks benchmarks =
        new Benchmarks(
            new PrintStream(
                new java.io.FileOutputStream(java.io.FileDescriptor.err),
                true,
                StandardCharsets.UTF_8));
    benchmarks.head();
    benchmarks.demoWeek(Path.of("examples/quillback-week"));
    benchmarks.firstPlans();
    new ResultsFile(results).replace("Benchmarks", benchmarks.lines);
  }

  private void say(String line) {
    lines.add(line);
    log.println(line);
  }

  private void head() {
    say(ResultsFile.machine() + " Written by `pressweek.examples.Benchmarks`.");
    say("Shared machines are noisy: compare ratios within one run, not figures between runs.");
  }

  private static Problem read(Path folder) throws IOException {
    return Week.build(FolderReader.read(folder), 0)
        .problem()
        .orElseThrow(() -> new IOException(folder + " has errors; see pressweek check"));
  }

  private static Plan plan(Problem problem, Settings settings, long[] firstMillis) {
    Head head = new Head("1", "", 0, Map.of(), settings, List.of(), false);
    long begun = System.nanoTime();
    return new Planner(problem)
        .plan(
            head,
            Optional.empty(),
            progress -> {
              if (firstMillis[0] == 0) {
                firstMillis[0] = Math.max(1, (System.nanoTime() - begun) / 1_000_000);
              }
            });
  }

  private void demoWeek(Path folder) throws IOException {
    Problem problem = read(folder);
    say("");
    say("## The demo week after " + SECONDS + " seconds");
    say("");
    say(
        "| seed | avoidable cost | late | left out | changes h | below EDD | below best ATCS | first plan ms | audit |");
    say("|---|---|---|---|---|---|---|---|---|");
    for (long seed : SEEDS) {
      long[] first = {0};
      Plan plan = plan(problem, new Settings(SECONDS, 0, seed), first);
      Figures figures = plan.figures();
      int findings = Audit.check(problem, plan).size();
      say(
          String.format(
              Locale.ROOT,
              "| %d | %,.2f | %d | %d | %.1f | %s | %s | %d | %s |",
              seed,
              figures.avoidableCost() / 100_000.0,
              figures.lateLines(),
              figures.unplacedLines() - problem.unplaced().size(),
              figures.changeMin() / 60.0,
              below(plan, 0),
              below(plan, 1),
              first[0],
              findings == 0 ? "nothing found" : findings + " findings"));
    }
    Plan last = plan(problem, new Settings(0, 1, 1), new long[] {0});
    say("");
    for (Reference reference : last.head().references()) {
      say(
          String.format(
              Locale.ROOT,
              "- %s: %,.2f, %d late or left out, %.1f h of changes",
              reference.name(),
              reference.avoidableCost() / 100_000.0,
              reference.lateLines(),
              reference.changeMin() / 60.0));
    }
  }

  private static String below(Plan plan, int reference) {
    long other = plan.head().references().get(reference).avoidableCost();
    return String.format(
        Locale.ROOT, "%.1f %%", 100 - 100.0 * plan.figures().avoidableCost() / Math.max(1, other));
  }

  private void firstPlans() throws IOException {
    say("");
    say("## Time to the first plan of drawn plants");
    say("");
    say(
        "From the problem to a complete plan, tables and dispatch included, reading the files not; heap in use after it.");
    say("");
    say("| jobs | presses | seed | read s | first plan s | heap MB | audit of the plan |");
    say("|---|---|---|---|---|---|---|");
    first(150, 14);
    first(1_000, 60);
    first(5_000, 100);
  }

  private void first(int jobs, int presses) throws IOException {
    Path folder = Files.createTempDirectory("plant");
    PlantGenerator.write(folder, new PlantSize(jobs, presses), 1);
    long begun = System.nanoTime();
    Problem problem = read(folder);
    double read = (System.nanoTime() - begun) / 1e9;
    long[] first = {0};
    Plan plan = plan(problem, new Settings(1, 0, 1), first);
    Runtime runtime = Runtime.getRuntime();
    long used = (runtime.totalMemory() - runtime.freeMemory()) / 1_048_576;
    int findings = Audit.check(problem, plan).size();
    say(
        String.format(
            Locale.ROOT,
            "| %d | %d | 1 | %.1f | %.2f | %d | %s |",
            jobs,
            presses,
            read,
            first[0] / 1000.0,
            used,
            findings == 0 ? "nothing found" : findings + " findings"));
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
