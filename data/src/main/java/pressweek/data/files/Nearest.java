package pressweek.data.files;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The known words that a mistyped one most likely means. */
public final class Nearest {
  /** Words whose lengths differ by more than this are not compared letter by letter. */
  private static final int FAR = 32;

  private record Ranked(String word, int distance) {}

  private Nearest() {}

  /** The nearest of the known words, when no more than about a third of the letters differ. */
  static Optional<String> of(String word, Collection<String> known) {
    String lower = lower(word);
    return known.stream()
        .filter(
            k -> distance(lower, lower(k)) <= Math.max(1, Math.min(lower.length(), k.length()) / 3))
        .min(
            Comparator.comparingInt((String k) -> distance(lower, lower(k))).thenComparing(k -> k));
  }

  /** At most {@code most} of the known words, the nearest first, else in the given order. */
  public static List<String> to(String word, Collection<String> known, int most) {
    String lower = lower(word);
    return known.stream()
        .map(k -> new Ranked(k, distance(lower, lower(k))))
        .sorted(Comparator.comparingInt(Ranked::distance))
        .limit(most)
        .map(Ranked::word)
        .toList();
  }

  private static String lower(String word) {
    return word.toLowerCase(Locale.ROOT);
  }

  /**
   * Letters to insert, drop, exchange or swap with their neighbour to make one word of the other.
   */
  static int distance(String a, String b) {
    int longer = Math.abs(a.length() - b.length());
    if (longer > FAR) {
      return longer;
    }
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 ? j : j == 0 ? i : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    int exchanged = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(exchanged, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
