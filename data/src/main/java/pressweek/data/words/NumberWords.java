package pressweek.data.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;

/**
 * Numbers in words: {@code two}, {@code half}, {@code three eighths}, {@code one and a quarter}.
 */
final class NumberWords {
  private static final Map<String, Integer> WHOLE =
      Map.ofEntries(
          Map.entry("one", 1),
          Map.entry("two", 2),
          Map.entry("three", 3),
          Map.entry("four", 4),
          Map.entry("five", 5),
          Map.entry("six", 6),
          Map.entry("seven", 7),
          Map.entry("eight", 8),
          Map.entry("nine", 9),
          Map.entry("ten", 10),
          Map.entry("eleven", 11),
          Map.entry("twelve", 12),
          Map.entry("fifteen", 15),
          Map.entry("twenty", 20),
          Map.entry("thirty", 30),
          Map.entry("forty", 40),
          Map.entry("fifty", 50));
  private static final Map<String, Integer> PARTS =
      Map.of("half", 2, "quarter", 4, "eighth", 8, "sixteenth", 16);

  private NumberWords() {}

  /**
   * A number in words.
   *
   * @param value the number
   * @param to the token after it
   * @param fraction true when it says a part of one
   */
  record Found(BigDecimal value, int to, boolean fraction) {}

  /** The number that begins at a token; empty when no number does. */
  static Optional<Found> at(Tokens tokens, int from) {
    Integer whole = WHOLE.get(tokens.at(from).text());
    if (whole == null) {
      return part(tokens, from, 1).filter(found -> tokens.at(from).isWord());
    }
    int next = past(tokens, from + 1, "-");
    Optional<Found> over = part(tokens, next, whole);
    if (over.isPresent()) {
      return over;
    }
    if (tokens.at(next).is("and")) {
      int count = past(tokens, next + 1, "a");
      Integer parts = WHOLE.get(tokens.at(count).text());
      int name = parts == null ? count : past(tokens, count + 1, "-");
      Optional<Found> more = part(tokens, name, parts == null ? 1 : parts);
      if (more.isPresent()) {
        BigDecimal sum = more.get().value().add(BigDecimal.valueOf(whole));
        return Optional.of(new Found(sum, more.get().to(), true));
      }
    }
    return Optional.of(new Found(BigDecimal.valueOf(whole), from + 1, false));
  }

  private static int past(Tokens tokens, int at, String text) {
    return tokens.at(at).is(text) ? at + 1 : at;
  }

  private static Optional<Found> part(Tokens tokens, int at, int count) {
    Integer parts = PARTS.get(Stems.plural(tokens.at(at).text()));
    if (parts == null) {
      return Optional.empty();
    }
    BigDecimal value =
        BigDecimal.valueOf(count).divide(BigDecimal.valueOf(parts), MathContext.DECIMAL64);
    int to = past(tokens, past(tokens, at + 1, "an"), "of");
    return Optional.of(new Found(value, past(tokens, to, "an"), true));
  }
}
