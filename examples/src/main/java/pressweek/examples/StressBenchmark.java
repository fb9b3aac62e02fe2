package pressweek.examples;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.FolderReader;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Uncertainty;
import pressweek.data.stress.Stressed;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.stress.Stress;
import pressweek.solver.stress.SurePlanner;

/**
 * Measures how fast plans are replayed under uncertain times, and what plans chosen for holding
 * bring on the demo week; writes the part <i>How sure plans are</i> of {@code
 * examples/benchmarks/RESULTS.md}. Run from the project's root.
 */
public final class StressBenchmark {
  private static final System.Logger LOG = System.getLogger(StressBenchmark.class.getName());
  private static final Path DEMO = Path.of("examples/quillback-week");
  private static final PlantSize LARGE = new PlantSize(1_500, 70);
  private static final int STEPS = 1_000;

  private final List<String> lines = new ArrayList<>();
  private final Uncertainty luck;

  private StressBenchmark(Uncertainty luck) {
    this.luck = luck;
  }

  /** Runs and writes the results to the file named, or to their usual place. */
  public static void main(String[] args) throws IOException {
    Path results = Path.of(args.length > 0 ? args[0] : "examples/benchmarks/RESULTS.md");
    Uncertainty luck = FolderReader.read(DEMO).plant().uncertainty();
    List<String> lines = new StressBenchmark(luck).measure();
    lines.forEach(line -> LOG.log(System.Logger.Level.INFO, line));
    new ResultsFile(results).replace("How sure plans are", lines);
  }

  private List<String> measure() throws IOException {
    lines.add(ResultsFile.machine() + " Written by `pressweek.examples.StressBenchmark`.");
    lines.add("");
    lines.add(
        "Replays of a plan with the default figures of uncertainty; all estimates. The process is warmed before. Processor seconds are those of the one thread.");
    lines.add(load());
    lines.add("");
    lines.add(
        "| plan | runs | replays | threads | seconds | replays a second | processor s | replays a processor second |");
    lines.add("|---|---|---|---|---|---|---|---|");
    Plan demo = plan(DrawnProblem.read(DEMO), STEPS);
    speed("demo week", demo, 1_000, 1, false);
    speed("demo week", demo, 1_000, 1, true);
    speed("demo week", demo, 4_000, 1, true);
    speed("demo week", demo, 16_000, 1, true);
    speed("demo week", demo, 16_000, 2, true);
    Plan large = plan(DrawnProblem.draw(LARGE, 1), 1);
    speed("drawn plant", large, 1_000, 1, true);
    speed("drawn plant", large, 1_000, 2, true);
    whole("demo week", demo);
    whole("drawn plant", large);
    sure();
    return lines;
  }

  private static String load() {
    return String.format(
        Locale.ROOT,
        "Load of the machine at the start: %.1f.",
        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
  }

  private static Plan plan(Problem problem, int steps) {
    return new Planner(problem).plan(head(steps, 1), Optional.empty(), Watcher.NONE);
  }

  private static Head head(int steps, long seed) {
    return new Head("1", "", 0, Map.of(), new Settings(0, steps, seed), List.of(), false);
  }

  private void speed(String name, Plan plan, int replays, int threads, boolean counts) {
    Stress stress = new Stress(luck, new Stress.Asked(replays, 1, threads));
    ThreadMXBean thread = ManagementFactory.getThreadMXBean();
    long begun = System.nanoTime();
    long before = thread.getCurrentThreadCpuTime();
    stress.totals(plan);
    double processor = (thread.getCurrentThreadCpuTime() - before) / 1e9;
    double seconds = (System.nanoTime() - begun) / 1e9;
    if (counts) {
      lines.add(
          String.format(
              Locale.ROOT,
              "| %s | %d | %,d | %d | %.2f | %,.0f | %s | %s |",
              name,
              plan.runs().size(),
              replays,
              threads,
              seconds,
              replays / seconds,
              threads > 1 ? "" : String.format(Locale.ROOT, "%.2f", processor),
              threads > 1 ? "" : String.format(Locale.ROOT, "%,.0f", replays / processor)));
    }
  }

  private void whole(String name, Plan plan) {
    long begun = System.nanoTime();
    Stressed found =
        new Stress(luck, new Stress.Asked(1_000, 1, 2)).of(plan, Optional.empty(), List.of());
    double seconds = (System.nanoTime() - begun) / 1e9;
    lines.add("");
    lines.add(
        String.format(
            Locale.ROOT,
            "All that `stress` tells of the %s, 1,000 replays each of the plan and of %d things that could go otherwise, on two threads: %.1f s. On time by the plan %d lines, in the mean %.1f (95 %%: %.1f to %.1f).",
            name,
            found.gains().size(),
            seconds,
            found.asPlanned().onTimeLines(),
            found.totals().onTimeLines().mean(),
            found.totals().onTimeLines().low(),
            found.totals().onTimeLines().high()));
  }

  private void sure() throws IOException {
    lines.add("");
    lines.add(
        "Plans that hold (`plan --sure 4`) on the demo week: four searches of "
            + STEPS
            + " steps each (the same on every machine), whose runs are taken for longer step by step; the chosen one has the least avoidable cost in the mean of 400 replays, and the figures are from other replays. *Dearer* is what each plan costs more than the chosen one in the mean (95 % interval).");
    lines.add("");
    lines.add(
        "| seed | runs longer by | chosen | cost by the plan | cost in the mean | on time in the mean | dearer than the chosen |");
    lines.add("|---|---|---|---|---|---|---|");
    Problem problem = DrawnProblem.read(DEMO);
    for (long seed = 1; seed <= 3; seed++) {
      SurePlanner.Sure sure =
          new SurePlanner(problem, luck, 4, 2).plan(head(STEPS, seed), Watcher.NONE);
      for (int i = 0; i < sure.candidates().size(); i++) {
        row(seed, sure, i);
      }
    }
  }

  private void row(long seed, SurePlanner.Sure sure, int i) {
    SurePlanner.Candidate c = sure.candidates().get(i);
    lines.add(
        String.format(
            Locale.ROOT,
            "| %d | %.1f %% | %s | %,.2f | %,.2f | %.1f | %,.2f (%,.2f to %,.2f) |",
            seed,
            c.longerPct(),
            i == sure.chosen() ? "chosen" : "",
            money(c.cost()),
            money(c.meanCost().mean()),
            c.onTimeLines().mean(),
            money(c.cheaper().mean()),
            money(c.cheaper().low()),
            money(c.cheaper().high())));
  }

  private static double money(double thousandthsOfCent) {
    return thousandthsOfCent / 100_000;
  }
}
