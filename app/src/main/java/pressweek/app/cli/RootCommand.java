package pressweek.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code pressweek} itself, which knows only its subcommands and its version. */
@Command(
    name = "pressweek",
    description = "Weekly planning for plants that mold plastic grips round metal inserts.",
    mixinStandardHelpOptions = true,
    subcommands = {HeadingsCommand.class},
    versionProvider = RootCommand.Version.class)
public final class RootCommand implements Runnable {
  static final int BAD_INPUT = 2;
  private static final int BUG = 3;

  @Spec private CommandSpec spec;

  /** Runs what the arguments ask for and returns the exit code of the process. */
  public static int run(String... args) {
    CommandLine line = new CommandLine(new RootCommand());
    line.getCommandSpec().exitCodeOnInvalidInput(BAD_INPUT).exitCodeOnExecutionException(BUG);
    return line.execute(args);
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "no command given; expected one of the below");
  }

  /** The version of the jar this program was started from. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = RootCommand.class.getPackage().getImplementationVersion();
      return new String[] {"pressweek " + (version == null ? "(not packaged)" : version)};
    }
  }
}
