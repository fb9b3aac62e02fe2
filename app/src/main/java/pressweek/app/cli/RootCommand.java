package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import pressweek.app.store.StoreTrouble;

/** The command {@code pressweek} itself, which knows only its subcommands and its version. */
@Command(
    name = "pressweek",
    description = "Weekly planning for plants that mold plastic grips round metal inserts.",
    mixinStandardHelpOptions = true,
    subcommands = {
      PlanCommand.class,
      ReplanCommand.class,
      CompareCommand.class,
      WhyCommand.class,
      StressCommand.class,
      LearnCommand.class,
      PromiseCommand.class,
      SweepCommand.class,
      WorkCommand.class,
      CheckCommand.class,
      DecodeCommand.class,
      EncodeCommand.class,
      ExplainCommand.class,
      ReadCommand.class,
      SpecialCommand.class,
      ProofCommand.class,
      SheetCommand.class,
      PractiseCommand.class,
      AuditCommand.class,
      HeadingsCommand.class,
      BackUpCommand.class,
      RestoreCommand.class
    },
    versionProvider = RootCommand.Version.class)
public final class RootCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  /** Runs what the arguments ask for and returns the exit code of the process. */
  public static int run(String... args) {
    return commandLine().execute(args);
  }

  /** The same with pages to be served. */
  public static int run(PageServer pages, String... args) {
    return commandLine(pages).execute(args);
  }

  /** The command with its subcommands and exit codes. */
  static CommandLine commandLine() {
    return commandLine(NoPages.HERE);
  }

  private static CommandLine commandLine(PageServer pages) {
    CommandLine line = new CommandLine(new RootCommand());
    line.addSubcommand(new OpenCommand(pages));
    line.addSubcommand(new PersonCommand(pages));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler((e, command, parsed) -> failed(e, command));
    line.setParameterExceptionHandler((e, args) -> mistaken(e));
    line.registerConverter(int.class, text -> whole(text, Integer::parseInt));
    line.registerConverter(long.class, text -> whole(text, Long::parseLong));
    exitCodes(line);
    line.getSubcommands().values().forEach(RootCommand::exitCodes);
    // So that a quantity of -3 is answered as a quantity.
    line.getSubcommands().values().stream()
        .filter(sub -> sub.getCommandName().equals("promise"))
        .forEach(sub -> sub.setUnmatchedOptionsArePositionalParams(true));
    return line;
  }

  /** Says what is wrong with the arguments, and where to read what they are; not all of it. */
  private static int mistaken(ParameterException e) {
    CommandLine command = e.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(e.getMessage());
    UnmatchedArgumentException.printSuggestions(e, err);
    err.println("'" + command.getCommandSpec().qualifiedName() + " --help' says what it takes");
    return ExitCode.BAD_INPUT;
  }

  private static <N> N whole(String text, Function<String, N> parsed) {
    try {
      return parsed.apply(text);
    } catch (NumberFormatException e) {
      throw new TypeConversionException("'" + text + "' is not a whole number");
    }
  }

  /** What the machine refuses is said in a line; all else is a bug. */
  private static int failed(Exception e, CommandLine command) throws Exception {
    if (e instanceof IOException) {
      command
          .getErr()
          .println(
              e.getMessage()
                  + ": cannot be read or written ("
                  + e.getClass().getSimpleName()
                  + ")");
    } else if (e instanceof StoreTrouble) {
      command.getErr().println(e.getMessage());
    } else {
      throw e;
    }
    return ExitCode.BAD_INPUT;
  }

  private static void exitCodes(CommandLine line) {
    line.getCommandSpec()
        .exitCodeOnInvalidInput(ExitCode.BAD_INPUT)
        .exitCodeOnExecutionException(ExitCode.BUG);
  }

  @Override
  public Integer call() {
    CommandLine line = spec.commandLine();
    line.getErr().println("no command given; expected one of the below");
    line.usage(line.getErr());
    return ExitCode.BAD_INPUT;
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
