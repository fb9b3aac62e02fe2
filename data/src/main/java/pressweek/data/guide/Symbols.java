package pressweek.data.guide;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The symbols of a table, found by what stands at a place of a code. */
final class Symbols {
  private final boolean ignoreCase;
  private final Map<String, String> byText = new HashMap<>();
  private final int[] lengths;

  Symbols(Collection<String> symbols, boolean ignoreCase) {
    this.ignoreCase = ignoreCase;
    symbols.forEach(symbol -> byText.put(fold(symbol, ignoreCase), symbol));
    lengths =
        byText.keySet().stream().mapToInt(text -> -text.length()).distinct().sorted().toArray();
  }

  /** A text in the spelling in which texts are compared. */
  static String fold(String text, boolean ignoreCase) {
    return ignoreCase ? text.toUpperCase(Locale.ROOT) : text;
  }

  /** The symbols that stand at a place of a folded text and end by {@code to}; longest first. */
  List<String> at(String folded, int at, int to) {
    List<String> found = new ArrayList<>(1);
    for (int length : lengths) {
      if (at - length <= to) {
        String symbol = byText.get(folded.substring(at, at - length));
        if (symbol != null) {
          found.add(symbol);
        }
      }
    }
    return found;
  }

  /** The symbol that a whole text is; empty when it is none. */
  String exactly(String text) {
    return byText.getOrDefault(fold(text, ignoreCase), "");
  }
}
