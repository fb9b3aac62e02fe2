package pressweek.reports.pulls;

import java.util.Comparator;

/**
 * Bins in the order in which somebody walks past them: numbers within a bin's name count as
 * numbers, so that A2 comes before A10. A bin without a name comes last.
 */
public final class WalkingOrder {
  /** The order. */
  public static final Comparator<String> OF_BINS =
      Comparator.comparing(String::isBlank).thenComparing(WalkingOrder::compare);

  private WalkingOrder() {}

  private static int compare(String a, String b) {
    int i = 0;
    int j = 0;
    while (i < a.length() && j < b.length()) {
      int endA = end(a, i);
      int endB = end(b, j);
      int order = piece(a.substring(i, endA), b.substring(j, endB));
      if (order != 0) {
        return order;
      }
      i = endA;
      j = endB;
    }
    int left = Integer.compare(a.length() - i, b.length() - j);
    return left != 0 ? left : a.compareTo(b);
  }

  /** The end of the number that begins here, else of the character. */
  private static int end(String text, int from) {
    int end = from;
    while (end < text.length() && isDigit(text.charAt(end))) {
      end++;
    }
    return Math.max(end, from + 1);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static int piece(String a, String b) {
    if (!isDigit(a.charAt(0)) || !isDigit(b.charAt(0))) {
      return a.compareToIgnoreCase(b);
    }
    String first = a.replaceFirst("^0+(?=.)", "");
    String second = b.replaceFirst("^0+(?=.)", "");
    int digits = Integer.compare(first.length(), second.length());
    return digits != 0 ? digits : first.compareTo(second);
  }
}
