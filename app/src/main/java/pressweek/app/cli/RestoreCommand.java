package pressweek.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;

/** {@code pressweek restore}: puts a back-up in the place of what the pages keep. */
@Command(
    name = "restore",
    description = {
      "Puts a back-up in the place of what the pages of a plant's folder keep. The pages must not be open.",
      "The back-up is checked first; the file that it replaces is kept beside it."
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {"0:it is in its place", "2:the back-up or the store cannot be used"})
final class RestoreCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StoreOption store;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the plant's folder")
  private Path folder;

  @Parameters(index = "1", paramLabel = "FILE", description = "the back-up")
  private Path file;

  @Override
  public Integer call() {
    String place = store.place(folder);
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    if (place.startsWith("jdbc:")) {
      err.println("a database of PostgreSQL is restored by its own programs, such as pg_restore");
      return ExitCode.BAD_INPUT;
    }
    try {
      Optional<Path> kept = Store.restore(file, Path.of(place));
      out.println("Restored: " + place + kept.map(k -> "; what was there is " + k).orElse(""));
      out.flush();
      return ExitCode.DONE;
    } catch (StoreTrouble e) {
      err.println(e.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }
}
