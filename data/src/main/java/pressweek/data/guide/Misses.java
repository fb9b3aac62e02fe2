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

  private final boolean listening;
  private int reached = -1;
  private final Set<Miss> furthest = new LinkedHashSet<>();

  /** Misses that are kept, or that nobody wants to hear of. */
  Misses(boolean listening) {
    this.listening = listening;
  }

  /** True when misses are kept. */
  boolean listening() {
    return listening;
  }

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

  /** What was seen, where, and what was expected there; positions in the sentence count from 1. */
  CodeFault fault() {
    int position = furthest.stream().mapToInt(Miss::position).min().orElse(0);
    List<Miss> here = furthest.stream().filter(miss -> miss.position() == position).toList();
    Set<String> fields = new LinkedHashSet<>();
    Set<String> known = new TreeSet<>();
    Set<String> words = new LinkedHashSet<>();
    for (Miss miss : here) {
      if (miss.expected() instanceof Symbol symbol) {
        fields.add(symbol.field());
        known.addAll(symbol.known());
      } else if (miss.expected() instanceof Words other) {
        words.add(other.text());
      }
    }
    String all = here.isEmpty() ? "" : here.get(0).seen();
    String seen = Guide.shown(all);
    String at = " at position " + (position + 1);
    String wanted = String.join(" or ", words);
    if (fields.isEmpty()) {
      String what = seen.isEmpty() ? "the code ends" : "\"" + seen + "\"";
      String sentence = what + at + "; expected " + wanted;
      return new CodeFault(position, all.length(), seen, wanted, List.of(), sentence);
    }
    String field = String.join(" or ", fields);
    String what = seen.isEmpty() ? field + " missing" : "unknown " + field + " \"" + seen + "\"";
    String also = words.isEmpty() ? "" : "; or " + wanted;
    List<String> nearest = seen.isEmpty() ? List.of() : nearest(seen, known);
    return new CodeFault(
        position,
        all.length(),
        seen,
        words.isEmpty() ? field : field + " or " + wanted,
        nearest,
        what + at + "; " + known(seen, known) + also);
  }

  private static List<String> nearest(String seen, Set<String> known) {
    return new ArrayList<>(Nearest.to(seen, known, NEAREST));
  }

  private static String known(String seen, Set<String> known) {
    if (known.size() <= SHOWN) {
      return "known: " + String.join(", ", known);
    }
    return (seen.isEmpty() ? "for example: " : "nearest: ")
        + String.join(", ", nearest(seen, known))
        + " ("
        + known.size()
        + " known)";
  }
}
