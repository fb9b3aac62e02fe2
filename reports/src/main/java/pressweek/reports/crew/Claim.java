package pressweek.reports.crew;

import java.util.List;
import java.util.stream.Collectors;
import pressweek.reports.hours.Span;

/**
 * A part of somebody's time that is needed or there.
 *
 * @param span when
 * @param thousandths thousandths of a person
 * @param press press that needs it; empty for what is there
 * @param what run or change that needs it; empty likewise
 */
record Claim(Span span, int thousandths, String press, String what) {
  /** What needs somebody, each once, with its press. */
  static String what(List<Claim> claims) {
    return claims.stream()
        .filter(c -> c.thousandths() > 0)
        .map(c -> c.what() + " on " + c.press())
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
