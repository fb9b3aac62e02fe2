package pressweek.app.web;

import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Pull;

/**
 * What a scanned label says: that of a kit a plan and a run, that of a bin the bin, the lot or the
 * part.
 */
final class Label {
  private final String text;
  private final List<String> words;
  private final String planNumber;

  /**
   * A label as it was scanned.
   *
   * @param text what it says
   * @param planNumber number of the plan that the floor has
   */
  Label(String text, String planNumber) {
    this.text = text.strip();
    this.words = List.of(this.text.split("[\\s|;,]+"));
    this.planNumber = planNumber;
  }

  /** Whether it means a pull. */
  boolean means(Pull pull) {
    if (isOtherWeek()) {
      return false;
    }
    boolean run = words.contains(pull.run());
    boolean bin = !pull.bin().isEmpty() && pull.bin().equalsIgnoreCase(text);
    boolean lot = !pull.lot().isEmpty() && (is(pull.lot()) || words.contains(pull.lot()));
    return run || bin || lot || is(pull.insert());
  }

  private boolean is(String id) {
    return id.equalsIgnoreCase(text);
  }

  /** Run numbers hold within a week, through its replans. */
  private boolean isOtherWeek() {
    return words.size() == 2
        && words.get(0).matches("\\d{4}-W\\d{2}/\\d+")
        && !week(words.get(0)).equals(week(planNumber));
  }

  private static String week(String number) {
    return number.substring(0, Math.max(0, number.indexOf('/')));
  }

  /** What it comes to, for the person who scanned it. */
  String words(Optional<Pull> next, boolean known) {
    if (next.isPresent()) {
      Pull pull = next.get();
      return "%s: %,d %s for %s.".formatted(text, pull.pieces(), pull.insert(), pull.press());
    }
    if (known) {
      return text + ": brought already.";
    }
    return isOtherWeek()
        ? "The label is of plan " + words.get(0) + "; the floor has " + planNumber + "."
        : "No pull has run, bin, lot or part \"" + text + "\".";
  }
}
