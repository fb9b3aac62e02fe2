package pressweek.data.files;

import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Orientation;
import pressweek.data.problem.Person;
import pressweek.data.problem.Press;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Table;

/** Presses, who may run them, how they stand, what is away, and recorded changes. */
final class PressTables {
  static final TableSpec<PressRow> PRESSES =
      new TableSpec<>(
          Columns.of(InputFile.PRESSES)
              .text("!press", "cell")
              .choice("!orientation", Columns.words(Orientation.values()))
              .choice("table", Columns.words(Table.values()))
              .whole("lower_halves")
              .choice("barrel", Columns.words(Barrel.values()))
              .measured(Unit.KN, "+clamp_kn")
              .measured(Unit.G, "shot_ps_g")
              .measured(
                  Unit.MM,
                  "tie_bar_x_mm",
                  "tie_bar_y_mm",
                  "mold_min_mm",
                  "mold_max_mm",
                  "opening_mm")
              .text("calendar")
              .decimal("rate_per_h")
              .choice("food", Columns.words(FoodUse.values()))
              .text("dryer")
              .build(),
          PressTables::press,
          r -> "press \"" + r.press() + "\"");

  static final TableSpec<DryerRow> DRYERS =
      new TableSpec<>(
          Columns.of(InputFile.DRYERS).text("!dryer").decimal("!hopper_l").text("feeds").build(),
          f ->
              new DryerRow(
                  f.at(),
                  f.id("dryer"),
                  f.required("hopper_l").isEmpty() ? 0 : f.size("hopper_l").orElse(0),
                  f.list("feeds")),
          r -> "dryer \"" + r.dryer() + "\"");

  static final TableSpec<PersonRow> PEOPLE =
      new TableSpec<>(
          Columns.of(InputFile.PEOPLE)
              .text("!person")
              .choice("role", Columns.words(Person.Role.values()))
              .text("shifts", "may_run")
              .build(),
          f ->
              new PersonRow(
                  f.at(),
                  f.id("person"),
                  f.choice("role", Person.Role.class).orElse(Person.Role.OPERATOR),
                  f.list("shifts"),
                  f.list("may_run")),
          r -> "person \"" + r.person() + "\"");

  static final TableSpec<RunningRow> RUNNING =
      new TableSpec<>(
          Columns.of(InputFile.RUNNING)
              .text("!press", "order", "line", "mold", "tooling", "resin", "colour")
              .flag("cleared_for_food")
              .whole("good_made", "inserts_at_press")
              .time("started")
              .build(),
          PressTables::running,
          r -> "press \"" + r.press() + "\"");

  static final TableSpec<DowntimeRow> DOWNTIME =
      new TableSpec<>(
          Columns.of(InputFile.DOWNTIME)
              .text("!what")
              .time("!from", "!to")
              .text("reason")
              .choice("kind", Columns.words(DowntimeRow.Kind.values()))
              .text("mold")
              .whole("setters")
              .build(),
          PressTables::downtime,
          r -> "");

  static final TableSpec<RecordedChangeRow> RECORDED_CHANGES =
      new TableSpec<>(
          Columns.of(InputFile.RECORDED_CHANGES)
              .text(
                  "press",
                  "from_mold",
                  "from_resin",
                  "from_colour",
                  "to_mold",
                  "to_resin",
                  "to_colour")
              .whole("!minutes")
              .measured(Unit.KG, "purge_kg")
              .build(),
          f ->
              new RecordedChangeRow(
                  f.at(),
                  f.text("press"),
                  new Setup(f.text("from_mold"), "", f.text("from_resin"), f.text("from_colour")),
                  new Setup(f.text("to_mold"), "", f.text("to_resin"), f.text("to_colour")),
                  f.requiredWhole("minutes", 0, 100_000),
                  f.scaled("purge_kg", 1000, 10_000, RoundingMode.CEILING)),
          r -> "");

  private PressTables() {}

  private static PressRow press(Fields f) {
    Press.Build build =
        new Press.Build(
            f.requiredChoice("orientation", Orientation.class),
            f.choice("table", Table.class).orElse(Table.FIXED),
            f.whole("lower_halves", 1, 20).orElse(1),
            f.choice("barrel", Barrel.class).orElse(Barrel.STANDARD));
    return new PressRow(
        f.at(),
        f.id("press"),
        f.text("cell"),
        build,
        size(f),
        f.text("calendar"),
        f.choice("food", FoodUse.class).orElse(FoodUse.NEVER),
        f.money("rate_per_h").orElse(0),
        f.list("dryer"));
  }

  private static Press.Size size(Fields f) {
    OptionalDouble least = f.size("mold_min_mm");
    OptionalDouble most = f.size("mold_max_mm");
    if (least.isPresent() && most.isPresent() && least.getAsDouble() > most.getAsDouble()) {
      f.fault(
          "mold_max_mm",
          "order",
          f.seen("mold_max_mm") + " is less than " + f.seen("mold_min_mm") + "; expected more");
    }
    return new Press.Size(
        f.size("clamp_kn"),
        f.size("shot_ps_g"),
        f.size("tie_bar_x_mm"),
        f.size("tie_bar_y_mm"),
        least,
        most,
        f.size("opening_mm"));
  }

  private static DowntimeRow downtime(Fields f) {
    DowntimeRow.Kind kind = f.choice("kind", DowntimeRow.Kind.class).orElse(DowntimeRow.Kind.AWAY);
    boolean trial = kind == DowntimeRow.Kind.TRIAL;
    if (trial) {
      f.required("mold");
    }
    for (String column : List.of("mold", "setters")) {
      if (!trial && !f.text(column).isEmpty()) {
        f.fault(
            column,
            "kind",
            f.seen(column) + " stands in a row that is no trial; expected kind trial");
      }
    }
    return new DowntimeRow(
        f.at(),
        kind,
        f.id("what"),
        f.requiredTime("from"),
        f.requiredTime("to"),
        f.text("mold"),
        f.whole("setters", 0, 1000).orElse(trial ? 1 : 0),
        f.text("reason"));
  }

  private static RunningRow running(Fields f) {
    String order = f.text("order");
    if (order.isEmpty() && !f.text("line").isEmpty()) {
      f.fault(
          "order",
          "line",
          "line \"" + f.text("line") + "\" stands without an order; expected both or none");
    }
    return new RunningRow(
        f.at(),
        f.id("press"),
        order,
        order.isEmpty() ? "" : OrderTables.line(f),
        new Setup(f.text("mold"), f.text("tooling"), f.text("resin"), f.text("colour")),
        f.flag("cleared_for_food"),
        f.whole("good_made", 0, Fields.MOST_PIECES).orElse(0),
        f.whole("inserts_at_press", 0, Fields.MOST_PIECES),
        f.time("started"));
  }
}
