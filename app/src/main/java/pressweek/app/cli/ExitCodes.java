package pressweek.app.cli;

/** What the process says to whoever started it. */
final class ExitCodes {
  /** Done, and all placed and on time. */
  static final int DONE = 0;

  /** Done, with lines unplaced or late. */
  static final int NOT_ALL = 1;

  /** Bad input or arguments. */
  static final int BAD_INPUT = 2;

  /** A bug of Pressweek's own. */
  static final int BUG = 3;

  private ExitCodes() {}
}
