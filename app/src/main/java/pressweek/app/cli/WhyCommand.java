package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
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
import pressweek.app.plan.WhyJson;
import pressweek.data.files.Folder;
import pressweek.data.files.Nearest;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Job;
import pressweek.solver.why.Explanation;
import pressweek.solver.why.Why;

/** {@code pressweek why}: why an order line is where it is, and what would change that. */
@Command(
    name = "why",
    description = {
      "Says why an order line is where it is in a plan: what it costs, where its time goes from the start of the plan to the minute when it is ready, the three best other places and their price, and what would cure its lateness, each cure tried by planning the week again with it.",
      "For example: pressweek why FOLDER out/plan.json 4711/2"
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:the line is explained, and it is on time",
      "1:the line is explained, and it is late or unplaced",
      "2:the folder or the plan cannot be read, or the plan has no such line"
    })
final class WhyCommand implements Callable<Integer> {
  private static final int SHOWN = 5;

  /** How an answer is written. */
  enum Form {
    TEXT,
    JSON
  }

  @Spec private CommandSpec spec;
  @Mixin private FolderArgument folder;
  @Mixin private SearchLimits limits;

  @Parameters(index = "1", paramLabel = "PLAN", description = "plan.json")
  private Path file;

  @Parameters(
      index = "2",
      paramLabel = "ORDER[/LINE]",
      description = "an order line, or an order for all of its lines")
  private String name;

  @Option(
      names = "--as",
      paramLabel = "FORM",
      defaultValue = "text",
      description = "text or json (an object a line). Default: ${DEFAULT-VALUE}.")
  private Form form = Form.TEXT;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Settings settings = limits.settings(spec);
    try {
      return why(settings, err);
    } catch (IOException e) {
      err.println(e.getMessage() + ": cannot be read (" + e.getClass().getSimpleName() + ")");
      return ExitCode.BAD_INPUT;
    }
  }

  private int why(Settings settings, PrintWriter err) throws IOException {
    Optional<Folder> read = folder.read(err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Path parent = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
    Plan plan = PlanArgument.earlier(spec, file, parent).replaced().orElseThrow();
    List<String> changed = ChangedInputs.of(plan.head().inputs(), read.get().inputs());
    if (!changed.isEmpty()) {
      err.println(
          "note: plan "
              + plan.head().number()
              + " was made from other inputs; changed since: "
              + String.join(", ", changed));
    }
    Why why = new Why(plan, settings);
    List<String> lines = why.lines(name);
    if (lines.isEmpty()) {
      throw unknown(plan);
    }
    boolean good = true;
    for (String line : lines) {
      Explanation explanation = why.of(line);
      print(plan, explanation);
      good &= explanation.run().isPresent() && explanation.lateMin() == 0;
    }
    return good ? ExitCode.DONE : ExitCode.UNPLACED;
  }

  private void print(Plan plan, Explanation explanation) {
    PrintWriter out = spec.commandLine().getOut();
    if (form == Form.JSON) {
      out.println(WhyJson.line(plan, explanation));
    } else {
      out.print(WhyPrinter.text(plan, explanation));
    }
    out.flush();
  }

  private ParameterException unknown(Plan plan) {
    Set<String> known = new LinkedHashSet<>(plan.problem().jobs().stream().map(Job::id).toList());
    plan.unplaced().forEach(u -> known.add(u.id()));
    return new ParameterException(
        spec.commandLine(),
        "order line \"%s\" is not in plan %s; expected one such as %s"
            .formatted(
                name, plan.head().number(), String.join(", ", Nearest.to(name, known, SHOWN))));
  }
}
