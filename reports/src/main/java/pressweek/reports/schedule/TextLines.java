package pressweek.reports.schedule;

/**
 * Text in lines of limited width, broken at spaces; characters that could steer a terminal are
 * replaced.
 */
public final class TextLines {
  private final int width;
  private final StringBuilder out = new StringBuilder();

  /** Text for lines of so many columns. */
  public TextLines(int width) {
    this.width = width;
  }

  /** Adds an empty line and a heading; only the empty line when the heading is empty. */
  public void heading(String heading) {
    out.append('\n');
    if (!heading.isEmpty()) {
      line("", heading);
    }
  }

  /** Adds text with something in front of it; further lines are indented as far. */
  public void line(String lead, String text) {
    StringBuilder line = new StringBuilder(lead);
    int filled = lead.length();
    for (String word : harmless(text).split(" +")) {
      String rest = word;
      if (filled > lead.length() && filled + 1 + length(rest) > width) {
        end(line);
        line.append(" ".repeat(lead.length()));
        filled = lead.length();
      }
      if (filled > lead.length()) {
        line.append(' ');
        filled++;
      }
      while (filled + length(rest) > width) {
        int cut = rest.offsetByCodePoints(0, width - filled);
        line.append(rest, 0, cut);
        rest = rest.substring(cut);
        end(line);
        line.append(" ".repeat(lead.length()));
        filled = lead.length();
      }
      line.append(rest);
      filled += length(rest);
    }
    end(line);
  }

  /** Adds a line that is laid out already. */
  public void verbatim(String line) {
    out.append(harmless(line)).append('\n');
  }

  private void end(StringBuilder line) {
    out.append(line.toString().stripTrailing()).append('\n');
    line.setLength(0);
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  private static String harmless(String text) {
    StringBuilder clean = new StringBuilder();
    text.codePoints()
        .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? '?' : c)
        .forEach(clean::appendCodePoint);
    return clean.toString();
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
