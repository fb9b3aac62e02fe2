package pressweek.data.guide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import pressweek.data.files.Nearest;
import pressweek.data.guide.Miss.Symbol;
import pressweek.data.guide.Miss.Words;

/** The misses that got furthest into a code, over all families, and the sentence that they make. */
final class Misses {
  private static final int SHOWN = 12;
  private static final int NEAREST = 5;

  private int reached = -1;
  private final Set<Miss> furthest = new LinkedHashSet<>();

  /** Keeps the miss if no other got further. */
  void add(Miss miss) {
    if (miss.reached() > reached) {
      furthest.clear();
      reached = miss.reached();
    }
    if (miss.reached() == reached) {
      furthest.add(miss);
    }
  }

  /** What was seen, where, and what was expected there; positions count from 1. */
  String sentence() {
    int position = furthest.stream().mapToInt(Miss::position).min().orElse(0);
    List<Miss> here = furthest.stream().filter(miss -> miss.position() == position).toList();
    List<Symbol> symbols = new ArrayList<>();
    Set<String> words = new LinkedHashSet<>();
    for (Miss miss : here) {
      if (miss.expected() instanceof Symbol symbol) {
        symbols.add(symbol);
      } else if (miss.expected() instanceof Words other) {
        words.add(other.text());
      }
    }
    String seen = here.isEmpty() ? "" : Guide.shown(here.get(0).seen());
    String at = " at position " + (position + 1);
    if (symbols.isEmpty()) {
      String what = seen.isEmpty() ? "the code ends" : "\"" + seen + "\"";
      return what + at + "; expected " + String.join(" or ", words);
    }
    return symbolSentence(symbols, seen, at) + alsoExpected(words);
  }

  private static String symbolSentence(List<Symbol> symbols, String seen, String at) {
    Set<String> fields = new LinkedHashSet<>();
    Set<String> known = new TreeSet<>();
    for (Symbol symbol : symbols) {
      fields.add(symbol.field());
      known.addAll(symbol.known());
    }
    String field = String.join(" or ", fields);
    String what = seen.isEmpty() ? field + " missing" : "unknown " + field + " \"" + seen + "\"";
    return what + at + "; " + known(seen, known);
  }

  private static String known(String seen, Set<String> known) {
    if (known.size() <= SHOWN) {
      return "known: " + String.join(", ", known);
    }
    String nearest = String.join(", ", Nearest.to(seen, known, NEAREST));
    return (seen.isEmpty() ? "for example: " : "nearest: ")
        + nearest
        + " ("
        + known.size()
        + " known)";
  }

  private static String alsoExpected(Set<String> words) {
    return words.isEmpty() ? "" : "; or " + String.join(" or ", words);
  }
}
