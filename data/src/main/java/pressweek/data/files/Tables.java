package pressweek.data.files;

import java.util.List;

/** Every table of a folder. */
final class Tables {
  private static final List<TableSpec<?>> ALL =
      List.of(
          OrderTables.ORDERS,
          OrderTables.CUSTOMER_PARTS,
          OrderTables.STOCK,
          OrderTables.PROMISED,
          PressTables.PRESSES,
          PressTables.DRYERS,
          PressTables.PEOPLE,
          PressTables.RUNNING,
          PressTables.DOWNTIME,
          PressTables.RECORDED_CHANGES,
          MoldTables.MOLDS,
          MoldTables.STANDARDS,
          ArrangedTables.TOOLING,
          ArrangedTables.FAMILY,
          ArrangedTables.STAGES,
          MaterialTables.RESINS,
          MaterialTables.COLOURS,
          MaterialTables.INSERTS,
          MaterialTables.LOOK_ALIKES,
          MaterialTables.BOM,
          MaterialTables.RECORDS,
          MaterialTables.LOTS,
          MaterialTables.RECEIPTS,
          EventTables.EVENTS,
          ActualTables.ACTUALS);

  private Tables() {}

  /** The columns of a table. */
  static Columns columns(InputFile file) {
    return ALL.stream()
        .map(TableSpec::columns)
        .filter(c -> c.file() == file)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(file + " is not a table"));
  }
}
