package pressweek.data.files.table;

import java.util.Optional;

/** What separates the cells of a CSV file. */
final class Separator {
  private static final char[] KNOWN = {',', ';', '\t'};

  private Separator() {}

  /** The separator that a first line {@code sep=;} names, as spreadsheets write it. */
  static Optional<Character> declared(String firstLine) {
    String text = firstLine.strip().replace("\uFEFF", "").replace("\"", "");
    boolean declares = text.length() == 5 && text.regionMatches(true, 0, "sep=", 0, 4);
    return declares ? Optional.of(text.charAt(4)) : Optional.empty();
  }

  /** The separator that occurs most in the header, outside quotes; a comma when none does. */
  static char guess(String header) {
    char best = ',';
    for (char candidate : KNOWN) {
      if (count(header, candidate) > count(header, best)) {
        best = candidate;
      }
    }
    return best;
  }

  private static int count(String text, char separator) {
    int count = 0;
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      quoted ^= text.charAt(i) == '"';
      count += !quoted && text.charAt(i) == separator ? 1 : 0;
    }
    return count;
  }
}
