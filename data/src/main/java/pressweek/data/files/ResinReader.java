package pressweek.data.files;

import java.util.Locale;
import java.util.OptionalDouble;
import pressweek.data.molding.LetDown;
import pressweek.data.problem.Barrel;

/** Reads resins and colours, and whether the figures of a row go together. */
final class ResinReader {
  /** Hottest temperature in a cell, degrees Celsius. */
  static final double HOTTEST_C = 1000;

  private static final double COLDEST_MOLD_C = -50;

  private ResinReader() {}

  /** A resin; the melt is hotter than the part at ejection, and that hotter than the mold. */
  static ResinRow resin(Fields f) {
    OptionalDouble meltC = f.decimal("melt_c", 0, HOTTEST_C);
    OptionalDouble moldC = f.decimal("mold_c", COLDEST_MOLD_C, HOTTEST_C);
    OptionalDouble ejectC = f.decimal("eject_c", COLDEST_MOLD_C, HOTTEST_C);
    OptionalDouble dryH = f.decimal("dry_h", 0, 1000);
    OptionalDouble dryC = f.decimal("dry_c", 0, HOTTEST_C);
    OptionalDouble dryMaxH = f.decimal("dry_max_h", 0, 1000);
    Barrel barrel = f.choice("barrel", Barrel.class).orElse(Barrel.STANDARD);
    if (barrel != Barrel.THERMOSET) {
      above(f, new Pair("melt_c", meltC), new Pair("mold_c", moldC));
      above(f, new Pair("melt_c", meltC), new Pair("eject_c", ejectC));
      above(f, new Pair("eject_c", ejectC), new Pair("mold_c", moldC));
    }
    dryingTogether(f, dryH, dryC, dryMaxH);
    return new ResinRow(
        f.at(),
        f.id("resin"),
        f.text("grade"),
        f.decimal("density", 0.1, 30),
        meltC,
        moldC,
        ejectC,
        f.decimal("diffusivity", 0.0001, 10),
        f.decimal("cavity_kn_cm2", 0.01, 100),
        dryH,
        dryC,
        dryMaxH,
        f.decimal("bulk_density_kg_l", 0.05, 10),
        f.decimal("cure_s_per_mm", 0.01, 1000),
        f.flag("preheat_inserts"),
        f.decimal("regrind_max_pct", 0, 100),
        f.money("price_per_kg"),
        barrel,
        f.decimal("residence_max_min", 0, 10_000),
        f.list("never_next_to"));
  }

  /** A column and its figure. */
  private record Pair(String column, OptionalDouble figure) {}

  private static void above(Fields f, Pair hotter, Pair cooler) {
    boolean known = hotter.figure().isPresent() && cooler.figure().isPresent();
    if (known && hotter.figure().getAsDouble() <= cooler.figure().getAsDouble()) {
      f.fault(
          hotter.column(),
          "order",
          f.seen(hotter.column()) + " is not above " + f.seen(cooler.column()) + "; expected more");
    }
  }

  private static void dryingTogether(
      Fields f, OptionalDouble dryH, OptionalDouble dryC, OptionalDouble dryMaxH) {
    if (dryH.orElse(0) > 0 && f.text("dry_c").isEmpty()) {
      f.fault("dry_c", "both", f.seen("dry_h") + " stands without dry_c; expected both or none");
    }
    if (dryC.isPresent() && f.text("dry_h").isEmpty()) {
      f.fault("dry_h", "both", f.seen("dry_c") + " stands without dry_h; expected both or none");
    }
    if (dryMaxH.isPresent() && dryMaxH.getAsDouble() < dryH.orElse(0)) {
      f.fault(
          "dry_max_h",
          "order",
          f.seen("dry_max_h") + " is less than " + f.seen("dry_h") + "; expected more");
    }
  }

  /** A colour in a resin. */
  static ColourRow colour(Fields f) {
    String srgb = f.text("srgb").replaceFirst("^#", "").toUpperCase(Locale.ROOT);
    if (!srgb.matches("([0-9A-F]{6})?")) {
      f.fault(
          "srgb",
          "colour",
          f.seen("srgb") + " is not a colour; expected six digits such as C1121C");
    }
    return new ColourRow(
        f.at(),
        f.text("resin"),
        f.id("colour"),
        f.text("name"),
        srgb,
        f.decimal("rank", 0, 100),
        f.text("masterbatch"),
        letDownPct(f),
        f.money("price_per_kg"));
  }

  /** Percent of the total, or a ratio; 0 only for a colour that names no masterbatch. */
  private static OptionalDouble letDownPct(Fields f) {
    String column = "let_down_pct";
    String text = f.text(column);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    String plain = f.pointed(text);
    if (f.text("masterbatch").isEmpty() && plain.matches("0+(\\.0*)?\\s*%?")) {
      return OptionalDouble.of(0);
    }
    LetDown.Reading reading = LetDown.read(plain);
    if (reading instanceof LetDown.Reading.Good good) {
      return OptionalDouble.of(good.letDown().pct());
    }
    f.fault(column, "let-down", f.label(column) + " " + ((LetDown.Reading.Bad) reading).message());
    return OptionalDouble.empty();
  }
}
