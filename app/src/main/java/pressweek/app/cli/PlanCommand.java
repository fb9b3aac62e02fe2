package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.plan.EarlierPlans;
import pressweek.app.plan.WeekPlanner;
import pressweek.data.files.Folder;
import pressweek.data.plan.Settings;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;
import pressweek.reports.schedule.Summary;
import pressweek.solver.audit.Finding;
import pressweek.solver.stress.SurePlanner;

/** {@code pressweek plan}: a folder of orders becomes a press schedule and an insert pull list. */
@Command(
    name = "plan",
    description = {
      "Plans the week of a plant's folder and writes the press schedule, the insert pull list, the changes, the unplaced lines and what changed since the plan that it replaces: as CSV, one workbook, calendars, a page to look at and papers with labels to print; and plan.json.",
      "Ctrl-C ends the search and writes the best plan so far.",
      "Exit: 0 all placed and on time, 1 lines unplaced or late, 2 bad input or arguments, 3 a bug."
    },
    mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
  private static final int MOST_PLANS = 8;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the plant's folder")
  private Path folder;

  @Mixin private ScenarioOption scenario;

  @Option(
      names = "--out",
      paramLabel = "OUT",
      defaultValue = "out",
      description = "folder to write to (default: ${DEFAULT-VALUE})")
  private Path out;

  @Option(
      names = "--replaces",
      paramLabel = "PLAN",
      defaultValue = "",
      description =
          "plan.json of the plan that this one replaces (default: the one that lies in OUT, if any)")
  private String replaces = "";

  @Mixin private SearchLimits limits;

  @Option(
      names = "--sure",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "make N plans, 1 to 8 (1 compares nothing), each searched for as long and more careful than the one before, and take the one that costs least in the mean under uncertain times (docs/stress.md)")
  private int sure;

  @Option(
      names = "--now",
      defaultValue = "",
      paramLabel = "TIME",
      description =
          "moment from which to plan, as 2026-11-30T06:00Z, where plant.json has no plan_start (default: now)")
  private String now = "";

  @Option(
      names = "--allow-late",
      paramLabel = "HOURS",
      defaultValue = "0",
      description = "lines late by no more than this do not make the exit code 1")
  private int allowLateHours;

  @Override
  public Integer call() throws IOException {
    Settings settings = limits.settings(spec);
    if (sure < 1 || sure > MOST_PLANS) {
      throw new ParameterException(spec.commandLine(), "--sure must be 1 to " + MOST_PLANS);
    }
    if (allowLateHours < 0) {
      throw new ParameterException(spec.commandLine(), "--allow-late must not be negative");
    }
    return plan(settings);
  }

  private int plan(Settings settings) throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    OutFolder.check(spec, out, List.of(folder));
    int nowMin = Moments.nextHour(spec.commandLine(), now);
    if (!Files.isDirectory(folder)) {
      throw new ParameterException(
          spec.commandLine(), folder + " is not a folder; expected the folder of a plant");
    }
    EarlierPlans earlier = earlier();
    Folder read = scenario.read(folder);
    WeekResult week = Week.build(read, nowMin);
    if (week.problem().isEmpty()) {
      week.errors().forEach(err::println);
      err.println("no plan: " + Counts.of(week.errors().size(), "error") + " in the plant's files");
      return ExitCode.BAD_INPUT;
    }
    if (!week.warnings().isEmpty()) {
      err.println(Counts.of(week.warnings().size(), "warning") + "; see pressweek check " + folder);
    }
    WeekPlanner planner = new WeekPlanner(read, week.problem().get(), sure);
    Interrupt interrupt = new Interrupt(planner::stop);
    Runtime.getRuntime().addShutdownHook(interrupt);
    ProgressLine progress = new ProgressLine(err, week.problem().get().plant().rates());
    int code = ExitCode.BUG;
    try {
      WeekPlanner.Audited audited = planner.plan(earlier, settings, Moments.present(), progress);
      List<Path> files = WeekPlanner.write(audited, earlier, out, Moments.present());
      print(audited, files);
      planner.compared().forEach(c -> print(c, audited));
      code = exitCode(audited);
    } finally {
      interrupt.finished(code);
    }
    return code;
  }

  /** A plan that was named must be there and be read; the one that lies in OUT only should. */
  private EarlierPlans earlier() throws IOException {
    if (replaces.isEmpty()) {
      EarlierPlans there = EarlierPlans.in(out);
      PrintWriter err = spec.commandLine().getErr();
      there
          .complaints()
          .forEach(c -> err.println(out + ": " + c + "; nothing is compared with it"));
      return there;
    }
    Path file = Path.of(replaces);
    EarlierPlans named = EarlierPlans.replacing(file, out);
    if (named.replaced().isEmpty()) {
      String why =
          named.complaints().isEmpty() ? "no such file" : String.join("; ", named.complaints());
      throw new ParameterException(
          spec.commandLine(), "--replaces " + file + ": " + why + "; expected a plan.json");
    }
    return named;
  }

  private void print(WeekPlanner.Audited audited, List<Path> files) {
    PrintWriter text = spec.commandLine().getOut();
    List<String> findings = audited.findings().stream().map(Finding::message).toList();
    text.print(Summary.text(audited.plan(), findings, files.stream().map(Path::toString).toList()));
    text.flush();
  }

  private void print(SurePlanner.Sure compared, WeekPlanner.Audited audited) {
    PrintWriter text = spec.commandLine().getOut();
    text.print(SurePrinter.text(compared, audited.plan().problem().plant().rates()));
    text.flush();
  }

  private int exitCode(WeekPlanner.Audited audited) {
    return ExitCode.of(audited.plan(), audited.findings().isEmpty(), allowLateHours);
  }
}
