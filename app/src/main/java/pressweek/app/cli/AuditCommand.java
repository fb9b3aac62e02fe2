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
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.plan.ChangedInputs;
import pressweek.app.plan.Replanner;
import pressweek.data.files.Folder;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Plan;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;

/** {@code pressweek audit}: checks every hard rule and every figure of a plan anew. */
@Command(
    name = "audit",
    description = {
      "Checks every hard rule of a plan again and recomputes every figure, without the planner's code (docs/rules.md says which).",
      "Exit: 0 nothing found, 1 findings, 2 bad input, or a plan made from other inputs."
    },
    mixinStandardHelpOptions = true)
final class AuditCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the plant's folder")
  private Path folder;

  @Mixin private ScenarioOption scenario;

  @Parameters(index = "1", paramLabel = "PLAN", description = "plan.json")
  private Path file;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    try {
      return audit(err);
    } catch (IOException e) {
      err.println(e.getMessage() + ": cannot be read (" + e.getClass().getSimpleName() + ")");
      return ExitCode.BAD_INPUT;
    }
  }

  private int audit(PrintWriter err) throws IOException {
    if (!Files.isDirectory(folder) || !Files.isRegularFile(file)) {
      err.println("expected the folder of a plant and a plan.json; got " + folder + " and " + file);
      return ExitCode.BAD_INPUT;
    }
    PlanFile.Reading reading = PlanFile.read(file);
    reading.errors().forEach(err::println);
    if (reading.plan().isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Plan plan = reading.plan().get();
    Folder read = scenario.read(folder);
    List<String> changed = ChangedInputs.of(plan.head().inputs(), read.inputs());
    if (!changed.isEmpty()) {
      err.println(
          "plan "
              + plan.head().number()
              + " was made from other inputs; changed since: "
              + String.join(", ", changed));
      return ExitCode.BAD_INPUT;
    }
    if (plan.head().inputs().containsKey(Replanner.PLAN_INPUT)) {
      err.println(
          "plan "
              + plan.head().number()
              + " was made by replan; it is checked against the week that it holds itself");
      return tell(plan, Audit.check(plan.problem(), plan));
    }
    WeekResult week = Week.build(read, plan.problem().plant().hours().startMin());
    if (week.problem().isEmpty()) {
      week.errors().forEach(err::println);
      return ExitCode.BAD_INPUT;
    }
    return tell(plan, Audit.check(week.problem().get(), plan));
  }

  private int tell(Plan plan, List<Finding> findings) {
    PrintWriter text = spec.commandLine().getOut();
    for (Finding finding : findings) {
      text.println(finding.rule() + ": " + finding.message());
    }
    String number = "plan " + plan.head().number() + ": ";
    String runs = Counts.of(plan.runs().size(), "run") + " checked, ";
    String found = findings.isEmpty() ? "nothing found" : Counts.of(findings.size(), "finding");
    text.println(number + runs + found);
    return findings.isEmpty() ? ExitCode.DONE : ExitCode.UNPLACED;
  }
}
