package pressweek.examples.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import pressweek.data.files.FolderReader;
import pressweek.data.guide.Guide;
import pressweek.data.week.Week;
import pressweek.data.words.WordReader;
import pressweek.examples.ResultsFile;

/**
 * Measures how fast codes and words are read and writes that into {@code benchmarks/RESULTS.md}.
 * Run it from the folder {@code examples}; {@code DEVELOPERS.md} has the command.
 */
public final class CodeSpeedRun {
  private static final int SYMBOLS = 2_000;
  private static final int LONGEST = 64 * 1024;
  private static final int TIMES = 40;

  private CodeSpeedRun() {}

  /** Runs all of it. */
  public static void main(String[] args) throws IOException, RunnerException {
    List<String> lines = new ArrayList<>();
    lines.add(ResultsFile.machine() + " Written by `pressweek.examples.speed.CodeSpeedRun` (JMH,");
    lines.add("one thread, one fork, demo plant's guide).");
    lines.add("");
    lines.add("| what | a second | \u00b1 (99.9 %) |");
    lines.add("|---|---|---|");
    Collection<RunResult> results =
        new Runner(new OptionsBuilder().include(CodeSpeed.class.getName()).build()).run();
    for (RunResult result : results) {
      lines.add(
          String.format(
              Locale.ROOT,
              "| %s | %,.0f | %,.0f |",
              result.getPrimaryResult().getLabel(),
              result.getPrimaryResult().getScore(),
              result.getPrimaryResult().getScoreError()));
    }
    lines.add("");
    lines.add(large());
    lines.add(longest());
    new ResultsFile(Path.of("benchmarks", "RESULTS.md")).replace("Codes and words", lines);
  }

  /** The median time to read a guide with many symbols from its file. */
  private static String large() throws IOException {
    Path folder = Files.createTempDirectory("guide");
    StringBuilder table = new StringBuilder();
    for (int i = 0; i < SYMBOLS; i++) {
      table.append(
          String.format(
              Locale.ROOT,
              "%s\"H%04d\": {\"head_style\": \"style %d\", \"head_size_mm\": \"%d\", \"words\": \"head %d\"}",
              i == 0 ? "" : ",\n",
              i,
              i % 40,
              10 + i / 40,
              i));
    }
    Files.writeString(
        folder.resolve("guide.json"),
        "{\"schema\": \"pressweek-guide/1\", \"name\": \"large\", \"separator\": \"/\","
            + " \"fields\": {\"head\": {\"table\": {"
            + table
            + "}}, \"resin\": {\"table\": {\"PP\": {}, \"ABS\": {}}}},"
            + " \"parts\": {\"head\": {\"forms\": [\"{head}\"]}, \"resin\": {\"forms\": [\"{resin}\"]}},"
            + " \"families\": [{\"name\": \"grip\", \"parts\": [\"head\", \"resin\"]}]}");
    double[] first = {0};
    double median =
        median(
            first,
            () -> {
              if (Week.guide(FolderReader.read(folder)).guide().isEmpty()) {
                throw new IOException(folder + " has errors");
              }
            });
    return String.format(
        Locale.ROOT,
        "A guide of %,d symbols is read in %.0f ms (median of %d; %.0f ms the first time in the process).",
        SYMBOLS,
        median,
        TIMES,
        first[0]);
  }

  /** The slowest answer to long texts of several kinds. */
  private static String longest() throws IOException {
    Guide guide = CodeSpeed.guide(Path.of("quillback-week"));
    WordReader reader = new WordReader(guide);
    Random random = new Random(3);
    StringBuilder noise = new StringBuilder();
    while (noise.length() < LONGEST) {
      noise.append((char) (32 + random.nextInt(95)));
    }
    List<String> texts =
        List.of(
            noise.toString(),
            "9".repeat(LONGEST),
            "LV90/M10-B/".repeat(LONGEST / 11),
            "star knob 50 mm ".repeat(LONGEST / 16));
    double slowest = 0;
    for (String text : texts) {
      double[] first = {0};
      slowest =
          Math.max(
              slowest,
              median(
                  first,
                  () -> {
                    guide.explain(text);
                    reader.read(text);
                  }));
      slowest = Math.max(slowest, first[0]);
    }
    return String.format(
        Locale.ROOT,
        "Texts of 64 KB (noise, digits, codes, words), explained as a code and read as words: %.1f ms at the slowest.",
        slowest);
  }

  /** Something to be timed. */
  private interface Work {
    void run() throws IOException;
  }

  private static double median(double[] first, Work work) throws IOException {
    List<Double> millis = new ArrayList<>();
    for (int i = 0; i < TIMES; i++) {
      long begun = System.nanoTime();
      work.run();
      millis.add((System.nanoTime() - begun) / 1e6);
    }
    first[0] = millis.get(0);
    return millis.stream().sorted().skip(TIMES / 2).findFirst().orElse(0.0);
  }
}
