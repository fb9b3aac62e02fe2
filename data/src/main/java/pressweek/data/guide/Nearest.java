package pressweek.data.guide;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The known words that look most like a word that is not known. */
public final class Nearest {
  private Nearest() {}

  /**
   * At most {@code most} of the known words, those with the fewest differing letters first, then in
   * the given order.
   */
  public static List<String> to(String word, Collection<String> known, int most) {
    String sought = word.toUpperCase(Locale.ROOT);
    return known.stream()
        .sorted(Comparator.comparingInt(k -> distance(sought, k.toUpperCase(Locale.ROOT))))
        .limit(most)
        .toList();
  }

  /** Letters to add, drop, exchange or swap with their neighbour (optimal string alignment). */
  static int distance(String a, String b) {
    if (Math.abs(a.length() - b.length()) > 32) {
      return Math.abs(a.length() - b.length());
    }
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, i, j, a, b);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int cheapest(int[][] d, int i, int j, String a, String b) {
    int exchange = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(exchange, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
