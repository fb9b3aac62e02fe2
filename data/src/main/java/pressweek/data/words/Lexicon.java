package pressweek.data.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the words and symbols of a guide say. A phrase is looked up by its words without plural s,
 * joined: {@code lock nut}, {@code lock-nut} and {@code locknuts} are all {@code locknut}.
 */
final class Lexicon {
  private final Map<String, List<Sense>> phrases;
  private final Map<String, List<Sense>> acrossComma;
  private final Map<String, List<Sense>> symbols;
  private final Set<String> beginnings = new HashSet<>();
  private final Set<String> words;
  private final Map<String, Set<String>> named;

  /**
   * The phrases of a guide.
   *
   * @param phrases what each phrase says
   * @param acrossComma what phrases with a comma within say
   * @param symbols symbols that are looked for in capitals only
   * @param words single words that occur in phrases
   * @param named the words of all phrases that name a value, by attribute and value
   */
  Lexicon(
      Map<String, List<Sense>> phrases,
      Map<String, List<Sense>> acrossComma,
      Map<String, List<Sense>> symbols,
      Set<String> words,
      Map<String, Set<String>> named) {
    this.phrases = Map.copyOf(phrases);
    this.acrossComma = Map.copyOf(acrossComma);
    this.symbols = Map.copyOf(symbols);
    this.words = Set.copyOf(words);
    this.named = Map.copyOf(named);
    List<String> keys = new ArrayList<>(phrases.keySet());
    keys.addAll(acrossComma.keySet());
    for (String key : keys) {
      for (int end = 1; end <= key.length(); end++) {
        beginnings.add(key.substring(0, end));
      }
    }
  }

  /** What a phrase says; nothing when it is none. */
  List<Sense> senses(String key, boolean comma) {
    return (comma ? acrossComma : phrases).getOrDefault(key, List.of());
  }

  /** What a symbol in capitals says. */
  List<Sense> symbol(String capitals) {
    return symbols.getOrDefault(capitals, List.of());
  }

  /** True when a phrase begins so. */
  boolean begins(String key) {
    return beginnings.contains(key);
  }

  /** The single words of the phrases, without plural s. */
  Set<String> words() {
    return words;
  }

  /** True when a word occurs in some name of a value: {@code glass} in that of a filled resin. */
  boolean names(String attribute, String value, String word) {
    return named.getOrDefault(key(attribute, value), Set.of()).contains(word);
  }

  static String key(String attribute, String value) {
    return attribute + "=" + value;
  }

  /** Phrases that are written as one word, by what they say; for spelling. */
  Map<String, List<Sense>> phrases() {
    return new HashMap<>(phrases);
  }
}
