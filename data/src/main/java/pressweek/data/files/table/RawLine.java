package pressweek.data.files.table;

import java.util.List;

/** What a table holds at one place: a row of cells, or something that is not a row. */
public sealed interface RawLine {
  /** Line of the file in which it begins, from 1. */
  int line();

  /**
   * A row.
   *
   * @param line line in which it begins
   * @param cells cells, trimmed; empty text for an empty cell
   */
  record Cells(int line, List<String> cells) implements RawLine {
    public Cells {
      cells = List.copyOf(cells);
    }

    /** True when no cell holds anything. */
    public boolean blank() {
      return cells.stream().allMatch(String::isEmpty);
    }
  }

  /**
   * Something that is not a row; the rows after it are read.
   *
   * @param line line in which it begins
   * @param message what was seen; what was expected
   */
  record Fault(int line, String message) implements RawLine {}
}
