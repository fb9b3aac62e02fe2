package pressweek.reports.markup;

/** Text made harmless within markup, between tags as well as within a quoted attribute. */
final class Escape {
  private static final char REPLACEMENT = '\uFFFD';

  private Escape() {}

  static String text(String text) {
    if (text.chars().allMatch(Escape::plain)) {
      return text;
    }
    StringBuilder out = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(c -> append(out, c));
    return out.toString();
  }

  private static boolean plain(int c) {
    return c >= ' ' && c < 0x7F && c != '&' && c != '<' && c != '>' && c != '"' && c != '\'';
  }

  private static void append(StringBuilder out, int c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      case '\'' -> out.append("&#39;");
      default -> out.appendCodePoint(allowed(c) ? c : REPLACEMENT);
    }
  }

  /**
   * The characters of XML 1.0 (section 2.2), less the control characters that HTML does not want
   * either.
   */
  private static boolean allowed(int c) {
    boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r' || c >= 0x7F && c <= 0x9F;
    boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
    return !control && !surrogate && (c & 0xFFFE) != 0xFFFE;
  }
}
