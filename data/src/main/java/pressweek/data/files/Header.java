package pressweek.data.files;

import java.util.Map;
import java.util.Optional;

/**
 * The header of a table that was read: which column stands where.
 *
 * @param slots places by name of column
 * @param width cells from the first to the last that has a heading
 */
record Header(Map<String, Slot> slots, int width) {
  Header {
    slots = Map.copyOf(slots);
  }

  /**
   * Where a column stands.
   *
   * @param index place in the row, from 0
   * @param label the column as messages call it: its name, with the plant's own heading where that
   *     differs
   * @param other the unit in which its cells are written; empty for the column's own
   */
  record Slot(int index, String label, Optional<Unit.Other> other) {}
}
