package pressweek.data.files;

/**
 * A finding in an input file: what was seen and what was expected.
 *
 * @param severity what it means for the plan
 * @param file file name
 * @param line line in the file, from 1; 0 for the file as a whole
 * @param column column or key; empty for none in particular
 * @param message {@code what we saw; what we expected}
 */
public record InputError(Severity severity, String file, int line, String column, String message) {
  /** What a finding means for the plan. */
  public enum Severity {
    /** A fault in the plant's own files: there is no plan. */
    ERROR,
    /** A fault in one order line: the line stays unplaced, the others are planned. */
    ORDER_LINE,
    /** Something that was left out or assumed; the plan is made. */
    WARNING
  }

  /** Where it is. */
  public At at() {
    return new At(file, line);
  }

  /** The finding as a person reads it: {@code file:line: message}. */
  @Override
  public String toString() {
    return at() + ": " + message;
  }
}
