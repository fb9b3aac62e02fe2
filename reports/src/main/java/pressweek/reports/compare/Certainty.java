package pressweek.reports.compare;

import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Whether a difference between two scenarios is more than the search itself varies. Both are
 * planned with the same seeds. It is sure when the worst of one side's plans is still better than
 * the best of the other's, so that their ranges do not touch. If nothing but the seed told the
 * plans apart, {@code n} of each would come to lie so by chance once in {@code C(2n, n) / 2} times:
 * 10 for three seeds, 126 for five (the exact rank test of Wilcoxon, Biometrics Bulletin 1 (1945)
 * 80-83, at its most extreme).
 */
public enum Certainty {
  /** All plans of both sides have the same value. */
  SAME,
  /** The ranges of both sides do not touch. */
  SURE,
  /** They do: the search itself varies as much. */
  WITHIN,
  /** Too few seeds to tell. */
  UNTOLD;

  /** Seeds below which chance alone would do it too often. */
  public static final int FEWEST = 3;

  /** How sure a difference is. */
  public static Certainty of(List<Double> base, List<Double> other) {
    if (Math.min(base.size(), other.size()) < FEWEST) {
      return UNTOLD;
    }
    double least = Collections.min(base);
    double most = Collections.max(base);
    double otherLeast = Collections.min(other);
    double otherMost = Collections.max(other);
    if (least == otherMost && otherLeast == most) {
      return SAME;
    }
    return otherLeast > most || otherMost < least ? SURE : WITHIN;
  }

  /** How it is told, in words, for so many seeds. */
  public static String method(int seeds) {
    String way =
        "Each scenario is planned with the same seeds and the same effort. A difference is called"
            + " sure when the worst of one side's plans is better than the best of the other's;"
            + " else it is within what the search itself varies. ";
    if (seeds < FEWEST) {
      return way + "With fewer than " + FEWEST + " seeds nothing is called sure.";
    }
    return way
        + String.format(
            Locale.ROOT,
            "With %d seeds chance alone would do that once in %,d times.",
            seeds,
            chances(seeds));
  }

  /** Once in how many times chance alone would keep the ranges apart. */
  static long chances(int seeds) {
    double arrangements = 1;
    for (int i = 1; i <= seeds; i++) {
      arrangements = arrangements * (seeds + i) / i;
    }
    return Math.round(arrangements / 2);
  }
}
