package pressweek.examples;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.SweepResult;
import pressweek.app.sweep.Replaying;
import pressweek.app.sweep.SweepFile;
import pressweek.app.sweep.SweepReading;
import pressweek.app.sweep.Sweeping;
import pressweek.app.sweep.Worker;

/**
 * Measures what a task of a sweep takes beside its plan, and what a second worker brings, and
 * writes the part <i>Sweeps</i> of {@code examples/benchmarks/RESULTS.md}. Run from the project's
 * root; each address is a database of PostgreSQL without tables that is measured beside SQLite.
 *
 * <pre>
 * {@code java ... pressweek.examples.SweepBenchmark [jdbc:postgresql://...]}
 * </pre>
 */
public final class SweepBenchmark {
  private static final System.Logger LOG = System.getLogger(SweepBenchmark.class.getName());
  private static final Path SMALL = Path.of("examples", "quillback-small");
  private static final Path WEEK = Path.of("examples", "quillback-week");
  private static final int NOW = 29_000_000;
  private static final int WARM = 20;
  private static final int TRIVIAL = 200;
  private static final int WHOLE = 60;
  private static final int WHOLE_STEPS = 500;

  private final List<String> lines = new ArrayList<>();
  private long seed = 1;

  private SweepBenchmark() {}

  /** Measures and writes. */
  public static void main(String[] args) throws IOException, StoreTrouble, InterruptedException {
    Path file = Files.createTempDirectory("sweep").resolve("sweep.pressweek");
    List<String> stores = new ArrayList<>(List.of(file.toString()));
    stores.addAll(Arrays.asList(args));
    new SweepBenchmark().run(stores);
  }

  private void run(List<String> stores) throws IOException, StoreTrouble, InterruptedException {
    lines.add(ResultsFile.machine() + " Written by `" + SweepBenchmark.class.getName() + "`.");
    lines.add("");
    lines.add(
        "Overhead is the time of the sweep less that of the plans themselves, a task. Workers are in one process.");
    lines.add("");
    lines.add("| store | task | tasks | workers | s | plan ms | overhead ms |");
    lines.add("|---|---|---|---|---|---|---|");
    for (String target : stores) {
      try (Store store = Store.open(target)) {
        String name = store.isShared() ? "PostgreSQL" : "SQLite";
        measure(store, SMALL, WARM, 1, 1);
        row(name, "three presses, 1 step", 1, measure(store, SMALL, TRIVIAL, 1, 1));
        Measured one = measure(store, WEEK, WHOLE, WHOLE_STEPS, 1);
        row(name, "demo week, " + WHOLE_STEPS + " steps", 1, one);
        Measured two = measure(store, WEEK, WHOLE, WHOLE_STEPS, 2);
        row(name, "demo week, " + WHOLE_STEPS + " steps", 2, two);
        times(name, one, two);
      }
    }
    lines.add(
        String.format(
            Locale.ROOT,
            "- load of the machine at the end: %.1f; one worker makes about 1 of it",
            ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage()));
    new ResultsFile(Path.of("examples", "benchmarks", "RESULTS.md")).replace("Sweeps", table());
  }

  private List<String> table() {
    List<String> all = new ArrayList<>(lines.stream().filter(l -> !l.startsWith("- ")).toList());
    all.add("");
    lines.stream().filter(l -> l.startsWith("- ")).forEach(all::add);
    return all;
  }

  private void times(String name, Measured one, Measured two) {
    lines.add(
        String.format(
            Locale.ROOT,
            "- two workers against one on %s: %.2f times as fast",
            name,
            (double) one.wallMillis() / two.wallMillis()));
  }

  private void row(String store, String task, int workers, Measured measured) {
    String row =
        String.format(
            Locale.ROOT,
            "| %s | %s | %d | %d | %.1f | %.0f | %.1f |",
            store,
            task,
            measured.tasks(),
            workers,
            measured.wallMillis() / 1000.0,
            (double) measured.planMillis() / measured.tasks(),
            (double) (measured.wallMillis() * workers - measured.planMillis()) / measured.tasks());
    LOG.log(System.Logger.Level.INFO, row);
    lines.add(row);
  }

  /**
   * A sweep.
   *
   * @param tasks its tasks
   * @param wallMillis milliseconds that it took
   * @param planMillis the same of all plans, each by itself
   */
  private record Measured(int tasks, long wallMillis, long planMillis) {}

  /** A sweep of seeds that no sweep before it had. */
  private Measured measure(Store store, Path folder, int tasks, int steps, int workers)
      throws StoreTrouble, InterruptedException {
    List<Long> seeds = LongStream.range(seed, seed + tasks).boxed().toList();
    seed += tasks;
    SweepReading.Read read =
        SweepReading.read(
            new SweepFile(steps, seeds, List.of(""), Replaying.NONE),
            List.of(folder),
            Path.of("."),
            NOW);
    List<Worker> working = new ArrayList<>();
    for (int i = 1; i <= workers; i++) {
      Worker.Settings settings = new Worker.Settings("worker " + i, 1, Duration.ofSeconds(2));
      working.add(new Worker(store, settings));
    }
    try {
      working.forEach(Worker::start);
      long begun = System.nanoTime();
      Sweeping.Swept swept = new Sweeping(store).sweep(read, progress -> {});
      long wall = (System.nanoTime() - begun) / 1_000_000;
      long plans = swept.results().values().stream().mapToLong(SweepResult::tookMillis).sum();
      return new Measured(tasks, wall, plans);
    } finally {
      working.forEach(Worker::close);
    }
  }
}
