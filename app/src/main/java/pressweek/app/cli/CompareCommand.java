package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.compare.CompareOutput;
import pressweek.app.compare.Effort;
import pressweek.app.compare.ScenarioPlanner;
import pressweek.app.compare.ScenarioWeeks;
import pressweek.data.files.InputError;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.reports.compare.CompareText;
import pressweek.reports.compare.SideBySide;
import pressweek.reports.compare.Tried;

/** {@code pressweek compare}: what would another shift, another mold, another promise bring? */
@Command(
    name = "compare",
    description = {
      "Plans the plant's folder as it stands and with each scenario on top, with the same effort and several seeds, and says what each would bring and whether that is more than the search itself varies. Scenario files: docs/scenario-files.md.",
      "Ctrl-C compares what is there so far.",
      "Exit: 0 all placed and on time, 1 lines unplaced or late in a plan that is shown, or a scenario in which a promise cannot be kept, 2 bad input or arguments, 3 a bug, or a plan that the audit rejects otherwise."
    },
    mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
  private static final int MOST_SEEDS = 50;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the plant's folder")
  private Path folder;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "SCENARIO",
      description = "scenario files, JSON")
  private List<Path> scenarios;

  @Option(
      names = "--out",
      paramLabel = "OUT",
      defaultValue = "compare",
      description = "folder to write to (default: ${DEFAULT-VALUE})")
  private Path out;

  @Option(
      names = "--seeds",
      paramLabel = "N",
      defaultValue = "" + Effort.SEEDS,
      description = "plans of each, 1 to 50; fewer than 3 tell nothing (default: ${DEFAULT-VALUE})")
  private int seeds;

  @Option(
      names = "--promised",
      paramLabel = "PLAN",
      defaultValue = "",
      description = "plan.json of the plan that the floor was promised, to count moves against")
  private String promised = "";

  @Mixin private SearchLimits limits;

  @Option(
      names = "--now",
      defaultValue = "",
      paramLabel = "TIME",
      description =
          "moment from which to plan, as 2026-11-30T06:00Z, where plant.json has no plan_start (default: now)")
  private String now = "";

  @Override
  public Integer call() throws IOException {
    Settings settings = limits.settings(spec);
    if (seeds < 1 || seeds > MOST_SEEDS) {
      throw new ParameterException(spec.commandLine(), "--seeds must be 1 to " + MOST_SEEDS);
    }
    return compare(settings);
  }

  private int compare(Settings settings) throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    arguments();
    Optional<Plan> before = promised();
    int nowMin = Moments.nextHour(spec.commandLine(), now);
    ScenarioWeeks read = ScenarioWeeks.read(folder, scenarios, nowMin);
    if (!read.errors().isEmpty()) {
      read.errors().forEach(err::println);
      err.println("nothing planned: " + Counts.of(read.errors().size(), "error"));
      return ExitCode.BAD_INPUT;
    }
    read.warnings().forEach(w -> err.println("note: " + w));
    Effort effort = new Effort(settings, seeds, Moments.present());
    ScenarioPlanner planner = new ScenarioPlanner(read.weeks(), effort, before);
    Interrupt interrupt = new Interrupt(planner::stop);
    Runtime.getRuntime().addShutdownHook(interrupt);
    int code = ExitCode.BUG;
    try {
      SideBySide all = planner.plan(line -> told(err, line));
      List<String> files = CompareOutput.write(all, out, Moments.present());
      PrintWriter text = spec.commandLine().getOut();
      text.print(CompareText.of(all, files));
      text.flush();
      code = exitCode(all);
    } finally {
      interrupt.finished(code);
    }
    return code;
  }

  private static void told(PrintWriter err, String line) {
    err.println(line);
    err.flush();
  }

  private void arguments() throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new ParameterException(
          spec.commandLine(), folder + " is not a folder; expected the folder of a plant");
    }
    OutFolder.check(spec, out, List.of(folder));
    for (Path scenario : scenarios) {
      if (!Files.isRegularFile(scenario)) {
        throw new ParameterException(
            spec.commandLine(), scenario + " is not a file; expected a scenario, JSON");
      }
    }
  }

  private Optional<Plan> promised() throws IOException {
    if (promised.isEmpty()) {
      return Optional.empty();
    }
    Path file = Path.of(promised);
    if (!Files.isRegularFile(file)) {
      throw new ParameterException(
          spec.commandLine(), "--promised " + file + ": no such file; expected a plan.json");
    }
    PlanFile.Reading reading = PlanFile.read(file);
    if (reading.plan().isEmpty()) {
      List<String> errors = reading.errors().stream().map(InputError::toString).toList();
      throw new ParameterException(
          spec.commandLine(), "--promised " + file + ": " + String.join("; ", errors));
    }
    return reading.plan();
  }

  /** The worst of the plans that are shown; a rejected plan is a bug, save for a promise. */
  private static int exitCode(SideBySide all) {
    boolean bug =
        all.base().broken() > 0
            || all.scenarios().stream()
                .anyMatch(t -> t.broken() > 0 && t.promisesAgainst().isEmpty());
    if (bug) {
      return ExitCode.BUG;
    }
    if (all.scenarios().stream().anyMatch(t -> t.broken() > 0)) {
      return ExitCode.UNPLACED;
    }
    return all.shown().stream()
        .map(Tried::best)
        .flatMap(Optional::stream)
        .mapToInt(p -> ExitCode.of(p.book().plan(), true, 0))
        .max()
        .orElse(ExitCode.UNPLACED);
  }
}
