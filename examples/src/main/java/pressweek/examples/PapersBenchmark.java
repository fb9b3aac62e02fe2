package pressweek.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import pressweek.app.plan.EarlierPlans;
import pressweek.app.plan.WeekPlanner;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.data.week.Week;

/**
 * Measures how long it takes to write all that a large plan is given out as (lists, workbook,
 * pages, labels, calendars), and writes the part <i>Papers</i> of {@code
 * examples/benchmarks/RESULTS.md}. Run from the project's root with the heap limit that is in
 * question.
 */
public final class PapersBenchmark {
  private static final System.Logger LOG = System.getLogger(PapersBenchmark.class.getName());
  private static final PlantSize SIZE = new PlantSize(1_650, 70);
  private static final int TIMES = 5;

  private PapersBenchmark() {}

  /** Runs and writes the results to the file named, or to their usual place. */
  public static void main(String[] args) throws IOException {
    Path results = Path.of(args.length > 0 ? args[0] : "examples/benchmarks/RESULTS.md");
    Path folder = Files.createTempDirectory("papers");
    try {
      List<String> lines = measure(folder.resolve("plant"), folder.resolve("out"));
      lines.forEach(line -> LOG.log(System.Logger.Level.INFO, line));
      new ResultsFile(results).replace("Papers", lines);
    } finally {
      delete(folder);
    }
  }

  private static List<String> measure(Path plant, Path out) throws IOException {
    // A seed that three divides: such a plant counts tips, plastic, cartons and labels, too.
    PlantGenerator.write(plant, SIZE, 3);
    Folder read = FolderReader.read(plant);
    Problem problem =
        Week.build(read, 0).problem().orElseThrow(() -> new IOException(plant + " has errors"));
    WeekPlanner planner = new WeekPlanner(read, problem);
    WeekPlanner.Audited audited =
        planner.plan(EarlierPlans.in(out), new Settings(0, 1, 1), 0, progress -> {});
    List<String> lines = new ArrayList<>();
    lines.add(ResultsFile.machine() + " Written by `pressweek.examples.PapersBenchmark`.");
    lines.add("");
    lines.add(
        String.format(
            Locale.ROOT,
            "All papers of a plan of %,d runs and %,d pulls on %d presses, its audit not counted; the first time in a process, then again.",
            audited.plan().runs().size(),
            audited.plan().pulls().size(),
            SIZE.presses()));
    lines.add("");
    lines.add("| time | all papers, s | files | MB written | plan that lay there read, s |");
    lines.add("|---|---|---|---|---|");
    for (int i = 1; i <= TIMES; i++) {
      long begun = System.nanoTime();
      EarlierPlans earlier = EarlierPlans.in(out);
      long ready = System.nanoTime();
      List<Path> files = WeekPlanner.write(audited, earlier, out, 0);
      double seconds = (System.nanoTime() - ready) / 1e9;
      lines.add(
          String.format(
              Locale.ROOT,
              "| %d | %.2f | %d | %.1f | %.2f |",
              i,
              seconds,
              files.size(),
              megabytes(files),
              (ready - begun) / 1e9));
    }
    return lines;
  }

  private static double megabytes(List<Path> files) throws IOException {
    long bytes = 0;
    for (Path file : files) {
      bytes += Files.size(file);
    }
    return bytes / 1e6;
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
