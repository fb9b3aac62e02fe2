package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.plan.ChangedInputs;
import pressweek.app.plan.LuckBasis;
import pressweek.data.files.AtomicFile;
import pressweek.data.files.Folder;
import pressweek.data.learning.LearnedLuck;
import pressweek.data.plan.Plan;
import pressweek.data.stress.Stressed;
import pressweek.reports.schedule.TextLines;
import pressweek.reports.stress.StressReport;
import pressweek.reports.stress.StressText;
import pressweek.reports.write.StressFiles;
import pressweek.solver.stress.Stress;

/** {@code pressweek stress}: how sure a plan is. */
@Command(
    name = "stress",
    description = {
      "Says how sure a plan is: replays it under uncertain cycles, scrap, change times, breakdowns and deliveries (plant.json, uncertainty), with its decisions as they are, and gives each order line its chance to be on time, the weakest links, and what would help.",
      "For example: pressweek stress FOLDER out/plan.json --against other/plan.json"
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:the plan was replayed",
      "2:the folder or a plan cannot be read, or is of another plant"
    })
final class StressCommand implements Callable<Integer> {
  private static final int WIDTH = 80;
  private static final int MOST_REPLAYS = 100_000;

  @Spec private CommandSpec spec;
  @Mixin private FolderArgument folder;

  @Parameters(index = "1", paramLabel = "PLAN", description = "plan.json")
  private Path file;

  @Option(
      names = "--runs",
      paramLabel = "N",
      defaultValue = "1000",
      description = "replays, 1 to 100000 (default: ${DEFAULT-VALUE})")
  private int replays;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "seed of the luck (default: ${DEFAULT-VALUE})")
  private long seed;

  @Option(
      names = "--against",
      paramLabel = "PLAN",
      defaultValue = "",
      description = "plan.json of another plan, replayed under the same luck")
  private String against = "";

  @Option(
      names = "--from-actuals",
      description =
          "take what past runs tell of cycles, scrap, changes and breakdowns (actuals.csv of the folder) in place of plant.json")
  private boolean fromActuals;

  @Option(
      names = "--out",
      paramLabel = "OUT",
      defaultValue = "",
      description =
          "folder to write stress.csv, stress_gains.csv, stress_slack.csv and stress.html to")
  private String out = "";

  @Override
  public Integer call() throws IOException {
    if (replays < 1 || replays > MOST_REPLAYS) {
      throw wrong("--runs must be 1 to " + MOST_REPLAYS);
    }
    PrintWriter err = spec.commandLine().getErr();
    return stress(err);
  }

  private int stress(PrintWriter err) throws IOException {
    Optional<Folder> read = folder.read(err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    if (!read.get().errors().isEmpty()) {
      read.get().errors().forEach(err::println);
      return ExitCode.BAD_INPUT;
    }
    if (!out.isEmpty()) {
      OutFolder.check(spec, Path.of(out), List.of(read.get().path()));
    }
    Plan plan = plan(file, read.get());
    Optional<Plan> other = Optional.empty();
    if (!against.isEmpty()) {
      other = Optional.of(plan(Path.of(against), read.get()));
      checkShared(plan, other.get());
    }
    Stress.Asked asked =
        new Stress.Asked(replays, seed, Runtime.getRuntime().availableProcessors());
    Optional<LearnedLuck> luck = luck(read.get(), err);
    if (luck.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Stressed stressed =
        new Stress(luck.get().uncertainty(), asked)
            .of(plan, other, LuckBasis.of(read.get().plant(), luck.get()));
    StressReport report = new StressReport(plan, stressed, file.toString(), against);
    List<String> files = write(report);
    spec.commandLine().getOut().print(StressText.of(report, files));
    spec.commandLine().getOut().flush();
    return ExitCode.DONE;
  }

  /** Plans of quite other lines would be compared by chance. */
  private void checkShared(Plan plan, Plan other) {
    Set<String> lines = lines(plan);
    if (Collections.disjoint(lines, lines(other))) {
      throw wrong(
          "%s: the plan has none of the order lines of %s; expected another plan of the same week"
              .formatted(against, file));
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), String.join("\n", Paragraph.of("", message)));
  }

  private static Set<String> lines(Plan plan) {
    Set<String> lines = new HashSet<>();
    plan.problem().jobs().forEach(job -> lines.add(job.id()));
    plan.unplaced().forEach(line -> lines.add(line.id()));
    return lines;
  }

  private Optional<LearnedLuck> luck(Folder read, PrintWriter err) throws IOException {
    return fromActuals
        ? ActualsOption.read("", read, err).map(runs -> LearnedLuck.of(read.plant(), runs.rows()))
        : Optional.of(new LearnedLuck(read.plant().uncertainty(), Map.of()));
  }

  private Plan plan(Path path, Folder read) throws IOException {
    Path parent = Optional.ofNullable(path.toAbsolutePath().getParent()).orElse(path);
    Plan plan = PlanArgument.earlier(spec, path, parent).replaced().orElseThrow();
    PlanArgument.checkPlant(spec, path, plan, read);
    if ((long) plan.runs().size() * replays > Stress.MOST_TIMES) {
      throw wrong(
          "--runs %d is too many for a plan of %d runs; expected at most %d"
              .formatted(replays, plan.runs().size(), Stress.MOST_TIMES / plan.runs().size()));
    }
    List<String> changed = ChangedInputs.of(plan.head().inputs(), read.inputs());
    if (!changed.isEmpty()) {
      TextLines note = new TextLines(WIDTH);
      note.line(
          "note: ",
          "plan %s (%s) was made from other inputs; changed since: %s"
              .formatted(path, plan.head().number(), String.join(", ", changed)));
      spec.commandLine().getErr().print(note);
      spec.commandLine().getErr().flush();
    }
    return plan;
  }

  private List<String> write(StressReport report) throws IOException {
    if (out.isEmpty()) {
      return List.of();
    }
    Path to = Path.of(out);
    List<String> files = new ArrayList<>();
    for (Map.Entry<String, byte[]> one : StressFiles.of(report).entrySet()) {
      Path path = to.resolve(one.getKey());
      AtomicFile.write(path, one.getValue());
      files.add(path.toString());
    }
    return files;
  }
}
