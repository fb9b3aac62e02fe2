package pressweek.app.cli;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import pressweek.data.files.Folder;
import pressweek.data.files.InputError;
import pressweek.data.files.InputError.Severity;
import pressweek.data.problem.NotChecked;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.data.week.Week;
import pressweek.data.week.WeekResult;

/** Says what is wrong with a folder and what can be planned of it, without planning. */
@Command(
    name = "check",
    description = "Check a plant's folder: errors, warnings, lines that cannot be planned.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:every order line can be planned",
      "1:some order lines cannot be planned",
      "2:the folder has errors; there would be no plan"
    })
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private FolderArgument folder;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Optional<Folder> read = folder.read(spec.commandLine().getErr());
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    int nowMin = Math.toIntExact(Instant.now().getEpochSecond() / 60);
    WeekResult week = Week.build(read.get(), nowMin);
    findings("Errors", week.errors(), out);
    findings("Warnings", warnings(week), out);
    week.problem().ifPresent(problem -> problem(problem, out));
    if (week.problem().isEmpty()) {
      out.println("There would be no plan; correct the errors first.");
    }
    out.flush();
    return exitCode(week);
  }

  /**
   * Warnings; faults of order lines stand among the lines that cannot be planned, unless there is
   * no such list.
   */
  private static List<InputError> warnings(WeekResult week) {
    return week.warnings().stream()
        .filter(f -> f.severity() == Severity.WARNING || week.problem().isEmpty())
        .toList();
  }

  private static int exitCode(WeekResult week) {
    return week.problem()
        .map(problem -> problem.unplaced().isEmpty() ? ExitCode.DONE : ExitCode.UNPLACED)
        .orElse(ExitCode.BAD_INPUT);
  }

  private static void findings(String title, List<InputError> findings, PrintWriter out) {
    if (!findings.isEmpty()) {
      out.println(title + " (" + findings.size() + ")");
      findings.forEach(finding -> Paragraph.of("  ", finding.toString()).forEach(out::println));
      out.println();
    }
  }

  private static void problem(Problem problem, PrintWriter out) {
    if (!problem.unplaced().isEmpty()) {
      out.println("Order lines that cannot be planned (" + problem.unplaced().size() + ")");
      problem.unplaced().forEach(line -> unplaced(line, out));
      out.println();
    }
    if (!problem.notChecked().isEmpty()) {
      out.println("Not checked this week, with the order lines that it touches");
      problem.notChecked().forEach(gap -> notChecked(gap, out));
      out.println();
    }
    out.println("Order lines that can be planned: " + problem.jobs().size());
  }

  private static void unplaced(Unplaced line, PrintWriter out) {
    out.println(
        "  "
            + line.id()
            + "  "
            + line.item()
            + String.format(Locale.ROOT, "  %,d pieces", line.pieces()));
    Paragraph.of("      ", line.reason()).forEach(out::println);
    Paragraph.of("      cure: ", line.cure()).forEach(out::println);
  }

  private static void notChecked(NotChecked gap, PrintWriter out) {
    String head = String.format(Locale.ROOT, "  %5d  ", gap.lines());
    Paragraph.of(head, gap.what() + "; add: " + gap.add()).forEach(out::println);
  }
}
