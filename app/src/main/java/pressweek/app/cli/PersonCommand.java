package pressweek.app.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pressweek.app.desk.Desk;
import pressweek.app.desk.FolderLook;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;

/** {@code pressweek person}: adds somebody who may log in to the pages. */
@Command(
    name = "person",
    description = {
      "Adds somebody who may log in to the pages of a plant's folder, or gives him another role and password.",
      "The password is asked for, or read as one line from standard input with --password-stdin."
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {"0:he may log in", "2:the name, role, password or store cannot be used"})
final class PersonCommand implements Callable<Integer> {
  private final PageServer pages;

  @Spec private CommandSpec spec;
  @Mixin private StoreOption store;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the plant's folder")
  private Path folder;

  @Parameters(index = "1", paramLabel = "NAME", description = "the name to log in with")
  private String name;

  @Parameters(
      index = "2",
      paramLabel = "ROLE",
      description = "order_desk, scheduler, handler, setter or viewer")
  private String role;

  @Option(names = "--password-stdin", description = "read the password from standard input")
  private boolean fromInput;

  PersonCommand(PageServer pages) {
    this.pages = pages;
  }

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    if (!Files.isDirectory(folder)) {
      throw new ParameterException(
          spec.commandLine(), folder + " is not a folder; expected the folder of a plant");
    }
    try (Store kept = store.open(folder)) {
      Desk desk = new Desk(kept, new FolderLook(folder, Moments.present()), Clock.systemUTC());
      Optional<String> wrong = pages.person(desk, name, role, password());
      if (wrong.isEmpty()) {
        spec.commandLine().getOut().println(name + " may log in as " + role);
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
      }
      err.println(wrong.get());
    } catch (StoreTrouble e) {
      err.println(e.getMessage());
    } catch (IOException e) {
      err.println(e.getMessage() + ": cannot be read (" + e.getClass().getSimpleName() + ")");
    }
    return ExitCode.BAD_INPUT;
  }

  private String password() throws IOException {
    Console console = System.console();
    if (!fromInput && console != null) {
      char[] typed = console.readPassword("Password of %s: ", name);
      return typed == null ? "" : new String(typed);
    }
    InputStreamReader input = new InputStreamReader(System.in, Charset.defaultCharset());
    String line = new BufferedReader(input).readLine();
    return line == null ? "" : line;
  }
}
