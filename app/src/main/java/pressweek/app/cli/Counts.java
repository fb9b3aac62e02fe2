package pressweek.app.cli;

/** Numbers of things in words. */
final class Counts {
  private Counts() {}

  /** For example {@code 1 warning} or {@code 2 warnings}. */
  static String of(int count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }
}
