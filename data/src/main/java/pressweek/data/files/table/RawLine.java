package pressweek.data.files.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a table holds at one place: a row of cells, or something that is not a row. */
public sealed interface RawLine {
  /** Line of the file in which it begins, from 1. */
  int line();

  /**
   * A row.
   *
   * @param line line in which it begins
   * @param cells cells, trimmed; empty text for an empty cell
   * @param origin what another file made of the row; empty for a row as it stands
   */
  record Cells(int line, List<String> cells, Optional<Origin> origin) implements RawLine {
    public Cells {
      cells = List.copyOf(cells);
    }

    /** A row as it stands. */
    public Cells(int line, List<String> cells) {
      this(line, cells, Optional.empty());
    }

    /** True when no cell holds anything. */
    public boolean blank() {
      return cells.stream().allMatch(String::isEmpty);
    }
  }

  /**
   * What another file made of a row.
   *
   * @param file the other file
   * @param line its line that names the row; 0 when it names no row in particular
   * @param cells its lines by cell that it fills, counted from 0
   */
  record Origin(String file, int line, Map<Integer, Integer> cells) {
    public Origin {
      cells = Map.copyOf(cells);
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
