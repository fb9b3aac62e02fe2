package pressweek.data.working;

import java.util.List;

/** A line of a working. */
public sealed interface Line {
  /**
   * A figure and how it came about.
   *
   * @param what what it is
   * @param formula its formula in words or symbols; empty for a figure that is only looked up
   * @param numbers the formula with its numbers and units; where it stands, for one looked up
   * @param result result with its unit
   * @param basis what it rests on
   */
  record Sum(String what, String formula, String numbers, String result, Basis basis)
      implements Line {}

  /** A sentence: what a figure means, or which of two figures counts. */
  record Note(String text) implements Line {}

  /**
   * A figure that cannot be said.
   *
   * @param what what it is
   * @param columns columns that would say it, each with its file and row
   */
  record Unknown(String what, List<String> columns) implements Line {
    public Unknown {
      columns = List.copyOf(columns);
    }
  }

  /** A caution: who rules where this arithmetic does not. */
  record Caution(String text) implements Line {}
}
