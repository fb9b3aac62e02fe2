package pressweek.data.files;

import pressweek.data.files.ActualRow.Pair;
import pressweek.data.files.ActualRow.Stops;
import pressweek.data.problem.Setup;

/** What runs took. */
final class ActualTables {
  private static final double LONGEST_CYCLE = 36_000;
  private static final double LONGEST_CHANGE = 100_000;
  private static final double LONGEST_RUN_H = 10_000;
  private static final int MOST_BREAKDOWNS = 10_000;

  static final TableSpec<ActualRow> ACTUALS =
      new TableSpec<>(
          Columns.of(InputFile.ACTUALS)
              .text("run")
              .time("date")
              .text("!press", "!mold", "resin", "colour", "from_mold", "from_resin", "from_colour")
              .decimal("planned_cycle_s", "real_cycle_s", "planned_scrap_pct", "real_scrap_pct")
              .decimal("planned_change_min", "real_change_min", "real_efficiency_pct", "run_h")
              .whole("breakdowns")
              .decimal("breakdown_min")
              .build(),
          ActualTables::actual,
          r -> r.run().isEmpty() ? "" : "run \"" + r.run() + "\"");

  private ActualTables() {}

  private static ActualRow actual(Fields f) {
    return new ActualRow(
        f.at(),
        f.text("run"),
        f.time("date"),
        f.id("press"),
        new Setup(f.id("mold"), "", f.text("resin"), f.text("colour")),
        new Setup(f.text("from_mold"), "", f.text("from_resin"), f.text("from_colour")),
        new Pair(
            f.decimal("planned_cycle_s", 0.1, LONGEST_CYCLE),
            f.decimal("real_cycle_s", 0.1, LONGEST_CYCLE)),
        new Pair(f.decimal("planned_scrap_pct", 0, 99), f.decimal("real_scrap_pct", 0, 100)),
        new Pair(
            f.decimal("planned_change_min", 0, LONGEST_CHANGE),
            f.decimal("real_change_min", 0, LONGEST_CHANGE)),
        f.decimal("real_efficiency_pct", 0, 200),
        new Stops(
            f.decimal("run_h", 0, LONGEST_RUN_H),
            f.whole("breakdowns", 0, MOST_BREAKDOWNS),
            f.decimal("breakdown_min", 0, LONGEST_CHANGE)));
  }
}
