package pressweek.app.cli;

/** What the exit code of the program says. */
final class ExitCode {
  /** Done, and every order line has a place. */
  static final int DONE = 0;

  /** Done, with order lines that have none, or lateness beyond what was allowed. */
  static final int UNPLACED = 1;

  /** The input or the arguments are in error. */
  static final int BAD_INPUT = 2;

  /** A bug. */
  static final int BUG = 3;

  private ExitCode() {}
}
