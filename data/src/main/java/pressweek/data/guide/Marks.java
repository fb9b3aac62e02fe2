package pressweek.data.guide;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The marks of specials, all of one length: digits from {@code 01} to {@code 99}, or letters from
 * {@code A} to {@code ZZ}.
 *
 * @param from first mark
 * @param to last mark
 * @param skip letters or digits that no mark holds, for example {@code IO}
 */
public record Marks(String from, String to, String skip) {
  private static final String DIGITS = "0123456789";
  private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  /** What is wrong with a range of marks; empty when nothing is. */
  static Optional<String> fault(String from, String to) {
    boolean digits = from.matches("\\d{1,6}") && to.matches("\\d{1,6}");
    boolean letters = from.matches("[A-Z]{1,4}") && to.matches("[A-Z]{1,4}");
    if (!digits && !letters || from.length() != to.length() || from.compareTo(to) > 0) {
      return Optional.of(
          "from \""
              + from
              + "\" to \""
              + to
              + "\"; expected two marks of one length, up to 6 digits or up to 4 capital letters,"
              + " the first one first");
    }
    return Optional.empty();
  }

  /** True when a text in capitals is one of the marks. */
  boolean holds(String mark) {
    return mark.length() == from.length()
        && mark.chars().allMatch(c -> alphabet().indexOf(c) >= 0 && skip.indexOf(c) < 0)
        && mark.compareTo(from) >= 0
        && mark.compareTo(to) <= 0;
  }

  /** The first mark that is not in use; empty when all are. */
  Optional<String> firstFree(Collection<String> used) {
    String mark = from;
    while (true) {
      if (holds(mark) && !used.contains(mark)) {
        return Optional.of(mark);
      }
      if (mark.equals(to)) {
        return Optional.empty();
      }
      mark = after(mark);
    }
  }

  /** The first two marks and the last one. */
  List<String> some() {
    Set<String> some = new LinkedHashSet<>();
    firstFree(some).ifPresent(some::add);
    firstFree(some).ifPresent(some::add);
    if (holds(to)) {
      some.add(to);
    }
    return List.copyOf(some);
  }

  private String alphabet() {
    return Character.isDigit(from.charAt(0)) ? DIGITS : LETTERS;
  }

  private String after(String mark) {
    String alphabet = alphabet();
    StringBuilder next = new StringBuilder(mark);
    for (int i = mark.length() - 1; i >= 0; i--) {
      int digit = alphabet.indexOf(mark.charAt(i)) + 1;
      next.setCharAt(i, alphabet.charAt(digit % alphabet.length()));
      if (digit < alphabet.length()) {
        return next.toString();
      }
    }
    return next.toString();
  }

  @Override
  public String toString() {
    return from + " to " + to + (skip.isEmpty() ? "" : " without " + skip);
  }
}
