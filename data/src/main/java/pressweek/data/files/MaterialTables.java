package pressweek.data.files;

import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import pressweek.data.problem.Barrel;
import pressweek.data.problem.LotStatus;

/** Resins, colours, inserts, components, declarations, lots and deliveries. */
final class MaterialTables {
  private static final List<String> INSERT_KINDS =
      List.of("stud", "through", "blind", "lock", "tall", "bushing", "shaft", "arm");

  /** Parts in a carton. */
  private static final int MOST_PER = 1_000_000;

  /** Passivation of an insert. */
  private enum Passivation {
    TRIVALENT,
    HEXAVALENT,
    NONE
  }

  static final TableSpec<ResinRow> RESINS =
      new TableSpec<>(
          Columns.of(InputFile.RESINS)
              .text("!resin", "grade")
              .decimal("density")
              .measured(Unit.C, "melt_c", "mold_c", "eject_c")
              .decimal("diffusivity", "cavity_kn_cm2", "dry_h")
              .measured(Unit.C, "dry_c")
              .decimal("dry_max_h", "bulk_density_kg_l", "cure_s_per_mm")
              .flag("preheat_inserts")
              .decimal("regrind_max_pct", "price_per_kg")
              .choice("barrel", Columns.words(Barrel.values()))
              .decimal("residence_max_min")
              .text("never_next_to")
              .build(),
          ResinReader::resin,
          r -> "resin \"" + r.resin() + "\"");

  static final TableSpec<ColourRow> COLOURS =
      new TableSpec<>(
          Columns.of(InputFile.COLOURS)
              .text("resin", "!colour", "name")
              .colour("srgb")
              .decimal("rank")
              .text("masterbatch")
              .decimal("let_down_pct", "price_per_kg")
              .build(),
          ResinReader::colour,
          r ->
              "colour \""
                  + r.colour()
                  + "\" of "
                  + (r.resin().isEmpty() ? "all resins" : "resin \"" + r.resin() + "\""));

  static final TableSpec<InsertRow> INSERTS =
      new TableSpec<>(
          Columns.of(InputFile.INSERTS)
              .text("!insert")
              .choice("!kind", INSERT_KINDS)
              .text("thread")
              .measured(Unit.MM, "length_mm")
              .text("material", "finish")
              .choice("passivation", Columns.words(Passivation.values()))
              .text("tip")
              .decimal("load_s")
              .measured(Unit.C, "preheat_c", "heat_max_c")
              .build(),
          MaterialTables::insert,
          r -> "insert \"" + r.insert() + "\"");

  static final TableSpec<BomRow> BOM =
      new TableSpec<>(
          Columns.of(InputFile.BOM)
              .text("!item", "component")
              .whole("pieces", "per")
              .choice("kind", Columns.words(BomRow.Kind.values()))
              .text("attribute", "value")
              .build(),
          MaterialTables::bom,
          r ->
              r.component().isEmpty()
                  ? "attribute \"" + r.attribute() + "\" of item \"" + r.item() + "\""
                  : "component \"" + r.component() + "\" of item \"" + r.item() + "\"");

  static final TableSpec<RecordRow> RECORDS =
      new TableSpec<>(
          Columns.of(InputFile.RECORDS)
              .text("!what", "!for")
              .time("date", "expires")
              .text("exemption", "certificate")
              .build(),
          f ->
              new RecordRow(
                  f.at(),
                  f.id("what"),
                  f.id("for").toLowerCase(Locale.ROOT),
                  f.time("date"),
                  f.time("expires"),
                  f.text("exemption"),
                  f.text("certificate")),
          r -> "");

  static final TableSpec<LotRow> LOTS =
      new TableSpec<>(
          Columns.of(InputFile.LOTS)
              .text("!what", "!lot", "bin")
              .whole("+on_hand")
              .measured(Unit.KG, "weight_kg")
              .time("received", "expires")
              .choice("status", Columns.words(LotStatus.values()))
              .text("reserved_for")
              .build(),
          MaterialTables::lot,
          r -> "lot \"" + r.lot() + "\" of \"" + r.what() + "\" in bin \"" + r.bin() + "\"");

  static final TableSpec<ReceiptRow> RECEIPTS =
      new TableSpec<>(
          Columns.of(InputFile.RECEIPTS)
              .text("!what")
              .whole("+quantity")
              .measured(Unit.KG, "weight_kg")
              .time("!expected")
              .decimal("inspect_h")
              .build(),
          f ->
              new ReceiptRow(
                  f.at(),
                  f.id("what"),
                  Amount.read(f, "quantity", 1),
                  f.requiredTime("expected"),
                  f.scaled("inspect_h", 60, 8784, RoundingMode.CEILING).orElse(0)),
          r -> "");

  private MaterialTables() {}

  private static BomRow bom(Fields f) {
    boolean says = !f.text("attribute").isEmpty();
    if (says && !f.text("component").isEmpty()) {
      f.fault("attribute", "both", "component and attribute in one row; expected one of the two");
    }
    BomRow.Kind kind = f.choice("kind", BomRow.Kind.class).orElse(BomRow.Kind.INSERT);
    int per = f.whole("per", 1, MOST_PER).orElse(1);
    boolean inPart = kind == BomRow.Kind.INSERT || kind == BomRow.Kind.TIP;
    if (per > 1 && inPart) {
      f.fault(
          "per",
          "kind",
          f.seen("per") + " of kind " + Columns.word(kind) + ", which every part has; expected 1");
    }
    return new BomRow(
        f.at(),
        f.id("item"),
        says ? "" : f.id("component"),
        f.whole("pieces", 1, 1000).orElse(1),
        per,
        kind,
        f.text("attribute"),
        says ? f.required("value") : "");
  }

  private static InsertRow insert(Fields f) {
    String kind = f.required("kind").toLowerCase(Locale.ROOT);
    if (!kind.isEmpty() && !INSERT_KINDS.contains(kind)) {
      f.fault(
          "kind",
          "choice",
          f.seen("kind") + " is not known; expected " + String.join(", ", INSERT_KINDS));
    }
    OptionalDouble preheatC = f.decimal("preheat_c", 0, ResinReader.HOTTEST_C);
    OptionalDouble heatMaxC = f.decimal("heat_max_c", 0, ResinReader.HOTTEST_C);
    boolean both = preheatC.isPresent() && heatMaxC.isPresent();
    if (both && preheatC.getAsDouble() > heatMaxC.getAsDouble()) {
      f.fault(
          "preheat_c",
          "order",
          f.seen("preheat_c") + " is above " + f.seen("heat_max_c") + "; expected no more");
    }
    return new InsertRow(
        f.at(),
        f.id("insert"),
        kind,
        f.text("thread"),
        f.size("length_mm"),
        f.text("material"),
        f.text("finish"),
        f.choice("passivation", Passivation.class).map(Columns::word).orElse(""),
        f.text("tip"),
        f.decimal("load_s", 0, 3600),
        preheatC,
        heatMaxC);
  }

  private static LotRow lot(Fields f) {
    return new LotRow(
        f.at(),
        f.id("what"),
        f.id("lot"),
        f.text("bin"),
        Amount.read(f, "on_hand", 0),
        f.time("received"),
        f.time("expires"),
        f.choice("status", LotStatus.class).orElse(LotStatus.USABLE),
        f.text("reserved_for"));
  }
}
