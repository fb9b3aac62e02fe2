package pressweek.data.files;

import java.math.RoundingMode;

/** Counted things, items in two stages, and family molds. */
final class ArrangedTables {
  private static final int MOST_THINGS = 10_000;
  private static final int MOST_CAVITIES = 1000;
  private static final int HOUR_MIN = 60;
  private static final int YEAR_H = 8784;

  static final TableSpec<ToolingRow> TOOLING =
      new TableSpec<>(
          Columns.of(InputFile.TOOLING).text("!tooling").whole("!count").text("note").build(),
          f ->
              new ToolingRow(
                  f.at(),
                  f.id("tooling"),
                  f.requiredWhole("count", 1, MOST_THINGS),
                  f.text("note")),
          r -> "tooling \"" + r.tooling() + "\"");

  static final TableSpec<StageRow> STAGES =
      new TableSpec<>(
          Columns.of(InputFile.STAGES).text("!item", "!core").decimal("rest_h").build(),
          f ->
              new StageRow(
                  f.at(),
                  f.id("item"),
                  f.id("core"),
                  f.scaled("rest_h", HOUR_MIN, YEAR_H, RoundingMode.CEILING).orElse(0)),
          r -> "item \"" + r.item() + "\"");

  static final TableSpec<FamilyRow> FAMILY =
      new TableSpec<>(
          Columns.of(InputFile.FAMILY).text("!mold", "!item").whole("!cavities").build(),
          f ->
              new FamilyRow(
                  f.at(),
                  f.id("mold"),
                  f.id("item"),
                  f.requiredWhole("cavities", 1, MOST_CAVITIES)),
          r -> "item \"" + r.item() + "\" in mold \"" + r.mold() + "\"");

  private ArrangedTables() {}
}
