package pressweek.data.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Words by what is left of them when a letter or two are struck out, so that a misspelt word finds
 * its likely originals without a comparison with all words. The distance is that of Damerau (1964):
 * a letter too many, too few, another one, or two neighbours exchanged; no letter is changed twice.
 */
final class SlipIndex {
  /** Shorter words are not corrected. */
  private static final int SHORTEST = 4;

  /** From this length on, two slips are allowed. */
  private static final int LONG = 8;

  /** Longer words are not looked at. */
  private static final int LONGEST = 24;

  private final Map<String, List<String>> byRest = new HashMap<>();

  SlipIndex(Collection<String> words) {
    for (String word : new TreeSet<>(words)) {
      if (word.length() >= SHORTEST && word.length() <= LONGEST && letters(word)) {
        for (String rest : rests(word, allowed(word))) {
          byRest.computeIfAbsent(rest, r -> new ArrayList<>(1)).add(word);
        }
      }
    }
  }

  private static boolean letters(String word) {
    return word.chars().allMatch(Character::isLetter);
  }

  private static int allowed(String word) {
    return word.length() >= LONG ? 2 : 1;
  }

  /** The nearest words, all at the same distance; none when there is none near enough. */
  List<String> nearest(String word) {
    if (word.length() < SHORTEST || word.length() > LONGEST) {
      return List.of();
    }
    int best = allowed(word);
    Set<String> nearest = new LinkedHashSet<>();
    Set<String> seen = new HashSet<>();
    for (String rest : rests(word, best)) {
      for (String candidate : byRest.getOrDefault(rest, List.of())) {
        if (seen.add(candidate)) {
          int distance = distance(word, candidate);
          if (distance < best) {
            nearest.clear();
            best = distance;
          }
          if (distance == best) {
            nearest.add(candidate);
          }
        }
      }
    }
    return nearest.stream().sorted().toList();
  }

  private static Set<String> rests(String word, int most) {
    Set<String> rests = new LinkedHashSet<>();
    rests.add(word);
    Set<String> last = Set.of(word);
    for (int i = 0; i < most; i++) {
      Set<String> shorter = new LinkedHashSet<>();
      for (String longer : last) {
        for (int at = 0; at < longer.length(); at++) {
          shorter.add(longer.substring(0, at) + longer.substring(at + 1));
        }
      }
      rests.addAll(shorter);
      last = shorter;
    }
    return rests;
  }

  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 ? j : j == 0 ? i : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  // The table, both words and the place in them are what the recurrence speaks of.
  private static int step(int[][] d, String a, String b, int i, int j) {
    int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(d[i - 1][j - 1] + same, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean exchanged =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return exchanged ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
