package pressweek.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import pressweek.data.guide.Guide;
import pressweek.reports.guide.CodeSheet;

/** Writes the guide as a page to print. */
@Command(
    name = "sheet",
    description = "Write the guide to the item code as a page to print.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:the page was written",
      "2:the folder or its guide cannot be read, or the page cannot be written"
    })
final class SheetCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private GuidedFolder folder;

  @Option(
      names = "--out",
      paramLabel = "FILE.html",
      description = "The page (default: ${DEFAULT-VALUE}).")
  private Path out = Path.of("code-sheet.html");

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Optional<GuidedFolder.Guided> read = folder.read(err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Guide guide = read.get().explainer().guide().orElseThrow();
    String page = CodeSheet.html(guide, read.get().folder().plant().name());
    return WrittenPage.write(out, page, spec.commandLine());
  }
}
