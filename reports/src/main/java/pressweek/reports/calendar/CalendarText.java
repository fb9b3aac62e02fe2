package pressweek.reports.calendar;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Lines of a calendar by RFC 5545: escaped, folded at 75 octets, ended by CRLF. */
final class CalendarText {
  private static final int OCTETS = 75;
  private static final DateTimeFormatter UTC =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

  private final StringBuilder out = new StringBuilder();

  /** Adds a property whose value the program itself has written. */
  CalendarText line(String property, String value) {
    fold(property + ":" + value);
    return this;
  }

  /** Adds a property of text (section 3.3.11). */
  CalendarText text(String property, String text) {
    return line(property, escaped(text));
  }

  /** Adds a point in time, minutes since 1970 UTC, in UTC (section 3.3.5, form 2). */
  CalendarText time(String property, int minute) {
    return line(property, UTC.format(Instant.ofEpochSecond(60L * minute)));
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    text.replace("\r\n", "\n").replace('\r', '\n').codePoints().forEach(c -> append(escaped, c));
    return escaped.toString();
  }

  private static void append(StringBuilder out, int c) {
    switch (c) {
      case '\\' -> out.append("\\\\");
      case ';' -> out.append("\\;");
      case ',' -> out.append("\\,");
      case '\n' -> out.append("\\n");
      default -> {
        boolean control = c < 0x20 && c != '\t' || c == 0x7F;
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        out.appendCodePoint(control || surrogate ? '\uFFFD' : c);
      }
    }
  }

  /** Folds between characters (section 3.1); a folded line begins with a space that counts. */
  private void fold(String line) {
    int octets = 0;
    for (int i = 0; i < line.length(); ) {
      int c = line.codePointAt(i);
      String character = Character.toString(c);
      int size = character.getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > OCTETS) {
        out.append("\r\n ");
        octets = 1;
      }
      out.append(character);
      octets += size;
      i += character.length();
    }
    out.append("\r\n");
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
