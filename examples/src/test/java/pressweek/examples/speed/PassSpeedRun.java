package pressweek.examples.speed;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import pressweek.data.problem.Problem;
import pressweek.examples.ResultsFile;

/**
 * Measures one timing pass and writes that into {@code benchmarks/RESULTS.md}. Run it from the
 * folder {@code examples}; {@code DEVELOPERS.md} has the command.
 */
public final class PassSpeedRun {
  private PassSpeedRun() {}

  /** Runs all of it. */
  public static void main(String[] args) throws IOException, RunnerException {
    List<String> lines = new ArrayList<>();
    lines.add(ResultsFile.machine() + " Written by `pressweek.examples.speed.PassSpeedRun` (JMH,");
    lines.add(
        "one thread, one fork; sequences of setup-aware dispatch, plants drawn with seed 1).");
    lines.add("");
    lines.add("| week | jobs | presses | a pass, \u00b5s | \u00b1 (99.9 %) | passes a second |");
    lines.add("|---|---|---|---|---|---|");
    for (RunResult result :
        new Runner(new OptionsBuilder().include(PassSpeed.class.getName()).build()).run()) {
      String plant = result.getParams().getParam("plant");
      Problem problem = PassSpeed.problem(plant);
      double micros = result.getPrimaryResult().getScore();
      lines.add(
          String.format(
              Locale.ROOT,
              "| %s | %d | %d | %,.1f | %,.1f | %,.0f |",
              plant,
              problem.jobs().size(),
              problem.floor().presses().size(),
              micros,
              result.getPrimaryResult().getScoreError(),
              1e6 / micros));
    }
    new ResultsFile(Path.of("benchmarks", "RESULTS.md")).replace("Timing pass", lines);
  }
}
