package pressweek.data.files.table;

/**
 * White space round a cell, with the no-break spaces, byte order marks and end-of-file signs that
 * programs leave.
 */
final class Blank {
  private Blank() {}

  static boolean is(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\uFEFF' || c == 0x1A;
  }

  /** The text without white space at its ends. */
  static String strip(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && is(text.charAt(from))) {
      from++;
    }
    while (to > from && is(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }
}
