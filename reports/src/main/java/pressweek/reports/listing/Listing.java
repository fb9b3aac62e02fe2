package pressweek.reports.listing;

import java.util.List;

/**
 * A list of a plan: what the floor or another program reads.
 *
 * @param name its name, which is also that of its file without the ending
 * @param title its title in words
 * @param paper how it looks on paper
 * @param columns columns
 * @param rows rows, each with a cell a column
 */
public record Listing(
    String name, String title, Paper paper, List<Column> columns, List<List<Cell>> rows) {
  public Listing {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<Cell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            "list " + name + " has " + columns.size() + " columns and a row of " + row.size());
      }
    }
  }

  /** The place of the first column of that name, from 0; -1 when there is none. */
  public int place(String column) {
    return columns.stream().map(Column::name).toList().indexOf(column);
  }
}
