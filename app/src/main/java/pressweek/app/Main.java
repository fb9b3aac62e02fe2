package pressweek.app;

import pressweek.app.cli.RootCommand;

/** The start of the program. */
public final class Main {
  private Main() {}

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] args) {
    System.exit(RootCommand.run(new ServedPages(), args));
  }
}
