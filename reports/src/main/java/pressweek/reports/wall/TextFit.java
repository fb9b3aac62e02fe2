package pressweek.reports.wall;

/**
 * How much room a text takes, estimated on the safe side, since the reader's font is not known
 * here.
 */
final class TextFit {
  /** Widths in ems of the widest common screen fonts, rounded up. */
  private static final double DIGIT = 0.62;

  private static final double SMALL = 0.58;
  private static final double CAPITAL = 0.72;
  private static final double NARROW = 0.36;
  private static final double WIDE = 1.0;

  private static final int TELLING = 7;

  private TextFit() {}

  /** Width of a text in pixels at a font size in pixels. */
  static double width(String text, double size) {
    return size * text.codePoints().mapToDouble(TextFit::ems).sum();
  }

  private static double ems(int c) {
    if (" .,:;'|/-()\u00B7il".indexOf(c) >= 0) {
      return NARROW;
    }
    if (Character.isDigit(c)) {
      return DIGIT;
    }
    if (c == 'm' || c == 'w' || c == 'M' || c == 'W' || c > 0x2FF) {
      return WIDE;
    }
    return Character.isUpperCase(c) ? CAPITAL : SMALL;
  }

  /**
   * The text if it fits, else as much of it as fits with an ellipsis, else nothing when too little
   * would be left to tell anything.
   */
  static String fit(String text, double size, double room) {
    if (width(text, size) <= room) {
      return text;
    }
    int end = text.length();
    while (end > 0 && width(text.substring(0, end) + "\u2026", size) > room) {
      end = text.offsetByCodePoints(end, -1);
    }
    return end < TELLING ? "" : text.substring(0, end) + "\u2026";
  }
}
