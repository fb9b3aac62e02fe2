package pressweek.data.files;

/** The files of a plant's folder. */
public enum InputFile {
  PLANT("plant.json"),
  GUIDE("guide.json"),
  HEADINGS("headings.json"),
  ORDERS("orders.csv"),
  CUSTOMER_PARTS("customer_parts.csv"),
  STOCK("stock.csv"),
  PRESSES("presses.csv"),
  DRYERS("dryers.csv"),
  PEOPLE("people.csv"),
  RUNNING("running.csv"),
  MOLDS("molds.csv"),
  TOOLING("tooling.csv"),
  FAMILY("family.csv"),
  STAGES("stages.csv"),
  STANDARDS("standards.csv"),
  RESINS("resins.csv"),
  COLOURS("colours.csv"),
  INSERTS("inserts.csv"),
  LOOK_ALIKES("lookalikes.csv"),
  BOM("bom.csv"),
  RECORDS("records.csv"),
  LOTS("lots.csv"),
  RECEIPTS("receipts.csv"),
  DOWNTIME("downtime.csv"),
  PROMISED("promised.csv"),
  RECORDED_CHANGES("changes_recorded.csv"),
  /** What happened on the floor; read by {@code replan} only. */
  EVENTS("events.csv"),
  /** What runs took; read by {@code learn} and {@code stress} only. */
  ACTUALS("actuals.csv");

  private final String fileName;

  InputFile(String fileName) {
    this.fileName = fileName;
  }

  /** The file's name; a table may stand in an XLSX of the same name instead. */
  public String fileName() {
    return fileName;
  }

  /** The name of the workbook that may stand in a table's place; the file's own name for JSON. */
  public String workbookName() {
    return table()
        ? fileName.substring(0, fileName.length() - ".csv".length()) + ".xlsx"
        : fileName;
  }

  /** True for a file without which there is no plan. */
  public boolean required() {
    return this == ORDERS || this == PRESSES || this == MOLDS;
  }

  /** True for a table, false for JSON. */
  public boolean table() {
    return fileName.endsWith(".csv");
  }
}
