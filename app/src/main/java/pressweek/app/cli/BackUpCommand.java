package pressweek.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;

/** {@code pressweek back-up}: what the pages keep, as one file. */
@Command(
    name = "back-up",
    description = {
      "Writes what the pages of a plant's folder keep to one file, also while they are open.",
      "A file that is there is not overwritten."
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {"0:the file was written", "2:the store cannot be read or the file written"})
final class BackUpCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StoreOption store;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the plant's folder")
  private Path folder;

  @Parameters(index = "1", paramLabel = "FILE", description = "the file to write")
  private Path file;

  @Override
  public Integer call() {
    try (Store kept = store.existing(folder)) {
      kept.backUp(file);
      PrintWriter out = spec.commandLine().getOut();
      out.println("Written: " + file);
      out.flush();
      return ExitCode.DONE;
    } catch (StoreTrouble e) {
      spec.commandLine().getErr().println(e.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }
}
