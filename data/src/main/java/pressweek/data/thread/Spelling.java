package pressweek.data.thread;

/**
 * One way to write the signs that people write in many: dashes, multiplication and inch signs,
 * fractions, spaces, capitals.
 */
final class Spelling {
  /** The vulgar fractions of one character, each with what it says. */
  private static final String VULGAR = "\u00BC\u00BD\u00BE\u215B\u215C\u215D\u215E";

  private static final String[] VULGAR_SAYS = {"1/4", "1/2", "3/4", "1/8", "3/8", "5/8", "7/8"};
  private static final String RAISED =
      "\u2070\u00B9\u00B2\u00B3\u2074\u2075\u2076\u2077\u2078\u2079";

  private final StringBuilder out = new StringBuilder();
  private boolean raised;

  private Spelling() {}

  /** The text in capitals, with one space at most between its parts and none around it. */
  static String plain(String text) {
    Spelling spelling = new Spelling();
    for (int i = 0; i < text.length(); i++) {
      spelling.add(text.charAt(i));
    }
    return spelling.out.toString().stripTrailing();
  }

  private void add(char c) {
    boolean wasRaised = raised;
    raised = false;
    if (c < 128) {
      addAscii(c);
    } else if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
      addAscii(' ');
    } else if (RAISED.indexOf(c) >= 0) {
      separateFromDigit(!wasRaised);
      out.append((char) ('0' + RAISED.indexOf(c)));
      raised = true;
    } else if (VULGAR.indexOf(c) >= 0) {
      separateFromDigit(true);
      out.append(VULGAR_SAYS[VULGAR.indexOf(c)]);
    } else if (c >= '\u2080' && c <= '\u2089') {
      out.append((char) ('0' + c - '\u2080'));
    } else {
      addSign(c);
    }
  }

  private void addAscii(char c) {
    boolean isSpace = c <= ' ';
    if (isSpace && (out.isEmpty() || last() == ' ')) {
      return;
    }
    if (c == '\'' && !out.isEmpty() && last() == '\'') {
      out.setCharAt(out.length() - 1, '"');
    } else {
      out.append(isSpace ? ' ' : c == '*' ? 'X' : c >= 'a' && c <= 'z' ? (char) (c - 32) : c);
    }
  }

  private void addSign(char c) {
    switch (c) {
      case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2015', '\u2212' -> out.append('-');
      case '\u00D7', '\u2715', '\u2A2F' -> out.append('X');
      case '\u2033', '\u201C', '\u201D', '\u201E' -> out.append('"');
      case '\u2032', '\u2018', '\u2019' -> addAscii('\'');
      case '\u2044', '\u2215' -> out.append('/');
      case '\u2116' -> out.append("NO");
      default -> out.append(c);
    }
  }

  private void separateFromDigit(boolean needed) {
    if (needed && !out.isEmpty() && last() >= '0' && last() <= '9') {
      out.append(' ');
    }
  }

  private char last() {
    return out.charAt(out.length() - 1);
  }
}
