package pressweek.reports.write;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from running text of a CSV cell as a formula. Text that begins with {@code =
 * + - @}, their full-width forms, a tab or a line break gets an apostrophe in front, unless it is a
 * plain number. Text that begins with apostrophes and then one of these gets one, too, so that a
 * reader gets the text back by taking one apostrophe away from such a cell.
 */
final class FormulaGuard {
  private static final Pattern FORMULA =
      Pattern.compile("'*[=+\\-@\\t\\r\\n\uFF1D\uFF0B\uFF0D\uFF20].*", Pattern.DOTALL);
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?");

  private FormulaGuard() {}

  /** The text as a cell may hold it. */
  static String guarded(String text) {
    if (text.isEmpty() || Character.isLetterOrDigit(text.charAt(0))) {
      return text;
    }
    boolean risky = FORMULA.matcher(text).matches() && !NUMBER.matcher(text).matches();
    return risky ? "'" + text : text;
  }
}
