package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.plan.ChangedInputs;
import pressweek.app.plan.EarlierPlans;
import pressweek.app.plan.Replanner;
import pressweek.data.files.EventsFile;
import pressweek.data.files.Folder;
import pressweek.data.files.InputError;
import pressweek.data.files.table.FileScan;
import pressweek.data.floor.EventReading;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.week.Week;
import pressweek.reports.moves.MovesText;
import pressweek.solver.audit.Finding;

/** {@code pressweek replan}: what is left of a plan, after something happened on the floor. */
@Command(
    name = "replan",
    description = {
      "Plans what is left of a plan from --now on, after what events.csv says has happened: a press or a mold away, people away, a run that ended early or late or is short, a lot on hold, a rush order, a line dropped or on hold. It writes all that plan writes, and moves.csv.",
      "Runs that have begun go on; the others move only where that costs less than it brings.",
      "Exit: 0 all placed and on time, 1 lines unplaced or late, 2 bad input or arguments, 3 a bug."
    },
    mixinStandardHelpOptions = true)
final class ReplanCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private FolderArgument folder;
  @Mixin private SearchLimits limits;

  @Parameters(index = "1", paramLabel = "PLAN", description = "plan.json of the plan to repair")
  private Path file;

  @Option(
      names = "--now",
      paramLabel = "TIME",
      defaultValue = "",
      description =
          "moment from which to plan, on the plant's clock, as 2026-12-01T09:30, or with an offset (default: now)")
  private String now = "";

  @Option(
      names = "--events",
      paramLabel = "EVENTS",
      defaultValue = "",
      description = "what happened, as a table (default: nothing)")
  private String events = "";

  @Option(
      names = "--out",
      paramLabel = "OUT",
      defaultValue = "out",
      description = "folder to write to (default: ${DEFAULT-VALUE})")
  private Path out;

  @Override
  public Integer call() throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    Settings settings = limits.settings(spec);
    return replan(settings, err);
  }

  private int replan(Settings settings, PrintWriter err) throws IOException {
    Optional<Folder> read = folder.read(err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    OutFolder.check(spec, out, List.of(read.get().path()));
    EarlierPlans earlier = PlanArgument.earlier(spec, file, out);
    Plan plan = earlier.replaced().orElseThrow();
    int nowMin = Moments.within(spec.commandLine(), now, Moments.present(), plan);
    Optional<Replanner.Happened> happened = happened(read.get(), plan, nowMin, err);
    if (happened.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    List<String> changed = ChangedInputs.of(plan.head().inputs(), read.get().inputs());
    if (!changed.isEmpty()) {
      err.println(
          "note: changed since plan "
              + plan.head().number()
              + ": "
              + String.join(", ", changed)
              + "; the plan's own figures count, new order lines are read by the files");
    }
    return replan(new Replanner(read.get(), earlier, happened.get()), plan, settings);
  }

  /** What happened; empty, and said on {@code err}, when it cannot be taken as it is. */
  private Optional<Replanner.Happened> happened(Folder read, Plan plan, int nowMin, PrintWriter err)
      throws IOException {
    Map<String, String> hashes = new HashMap<>();
    hashes.put(Replanner.PLAN_INPUT, FileScan.of(file).sha256());
    if (events.isEmpty()) {
      return Optional.of(new Replanner.Happened(List.of(), List.of(), nowMin, hashes));
    }
    if (!Files.isRegularFile(Path.of(events))) {
      throw new ParameterException(
          spec.commandLine(), "--events " + events + " is not a file; expected a table of events");
    }
    EventsFile.Reading reading = EventsFile.read(Path.of(events), read);
    hashes.put(Replanner.EVENTS_INPUT, reading.sha256());
    EventReading.Result result = EventReading.of(reading.rows(), plan, nowMin);
    List<InputError> findings = new ArrayList<>(reading.findings());
    findings.addAll(result.findings());
    if (!result.rush().isEmpty()) {
      findings.addAll(Week.build(read, nowMin).errors());
    }
    findings.forEach(f -> err.println((isError(f) ? "" : "warning: ") + f));
    long errors = findings.stream().filter(ReplanCommand::isError).count();
    if (errors > 0) {
      err.println("no plan: " + Counts.of((int) errors, "error") + " in what is to be replanned");
      return Optional.empty();
    }
    return Optional.of(new Replanner.Happened(result.events(), result.rush(), nowMin, hashes));
  }

  private static boolean isError(InputError finding) {
    return finding.severity() == InputError.Severity.ERROR;
  }

  private int replan(Replanner replanner, Plan plan, Settings settings) throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    Interrupt interrupt = new Interrupt(replanner::stop);
    Runtime.getRuntime().addShutdownHook(interrupt);
    int code = ExitCode.BUG;
    try {
      ProgressLine progress = new ProgressLine(err, plan.problem().plant().rates());
      Replanner.Result result = replanner.plan(settings, Moments.present(), progress);
      List<Path> files = replanner.write(result, out, Moments.present());
      List<String> findings = result.audited().findings().stream().map(Finding::message).toList();
      PrintWriter text = spec.commandLine().getOut();
      text.print(MovesText.of(result.moves(), findings));
      text.println();
      text.println("Written: " + Counts.of(files.size(), "file") + " in " + out);
      text.flush();
      code = ExitCode.of(result.audited().plan(), findings.isEmpty(), 0);
    } finally {
      interrupt.finished(code);
    }
    return code;
  }
}
