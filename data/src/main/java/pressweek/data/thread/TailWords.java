package pressweek.data.thread;

import java.util.Optional;
import pressweek.data.thread.ThreadText.Word;

/** What stands behind size and pitch: the series, and the tolerance class or fit. */
final class TailWords {
  private TailWords() {}

  /** What a word, in capitals, says of the series of an inch thread; empty when it says nothing. */
  static Optional<Word> inch(String word) {
    return switch (word) {
      case "UNC", "UNRC", "NC", "COARSE" -> Optional.of(Word.COARSE);
      case "UNF", "UNRF", "NF", "FINE" -> Optional.of(Word.FINE);
      case "UN", "UNR" -> Optional.of(Word.NONE);
      case "BSW", "BSF", "W", "WHIT" -> Optional.of(Word.WHITWORTH);
      case "NEF" -> Optional.of(Word.OTHER);
      default -> word.startsWith("UN") ? Optional.of(Word.OTHER) : Optional.empty();
    };
  }

  /** What a word, in capitals, says of the pitch of a metric thread; empty when nothing. */
  static Optional<Word> metric(String word) {
    return switch (word) {
      case "COARSE" -> Optional.of(Word.COARSE);
      case "FINE" -> Optional.of(Word.FINE);
      default -> Optional.empty();
    };
  }

  /**
   * True for a tolerance class by ISO 965-1 ({@code 6g}, {@code 5g6g}, {@code 6H/6g}) or a class of
   * fit by ASME B1.1 ({@code 2A}, {@code 3B}).
   */
  static boolean isTolerance(String token, boolean inch) {
    int pairs = 0;
    for (int i = 0; i < token.length(); i += 2) {
      if (pairs > 0 && token.charAt(i) == '/') {
        i++;
      }
      if (i + 1 >= token.length() || !isPair(token.charAt(i), token.charAt(i + 1), inch)) {
        return false;
      }
      pairs++;
    }
    return pairs > 0;
  }

  private static boolean isPair(char grade, char position, boolean inch) {
    return inch
        ? grade >= '1' && grade <= '3' && (position == 'A' || position == 'B')
        : grade >= '3' && grade <= '9' && position >= 'E' && position <= 'H';
  }
}
