package pressweek.data.files;

import java.math.RoundingMode;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import pressweek.data.problem.Hub;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Orientation;

/** Molds and recorded cycles. */
final class MoldTables {
  /** Seconds of a cycle. */
  private static final double LONGEST_CYCLE = 36_000;

  private static final int MOST_SHOTS = 1_000_000_000;

  static final TableSpec<MoldRow> MOLDS =
      new TableSpec<>(
          Columns.of(InputFile.MOLDS)
              .text("!mold", "+makes")
              .choice("hub", Columns.words(Hub.values()))
              .text("insert_kinds", "threads", "tooling")
              .whole("cavities", "!live_cavities")
              .text("+runs_on")
              .choice("orientation", Columns.words(Orientation.values()))
              .measured(Unit.MM, "length_mm", "width_mm", "height_mm")
              .measured(Unit.KG, "weight_kg")
              .measured(Unit.MM, "opening_mm")
              .text("place")
              .measured(Unit.G, "part_g", "runner_g")
              .measured(Unit.CM2, "part_area_cm2", "runner_area_cm2")
              .measured(Unit.MM, "wall_mm")
              .decimal("cycle_s")
              .flag("hand_load", "dummy_plugs")
              .whole("change_min")
              .time("available_from")
              .text("owner")
              .whole("shots_to_service", "service_shots")
              .decimal("service_h")
              .text("devices")
              .build(),
          MoldTables::mold,
          r -> "mold \"" + r.mold() + "\"");

  static final TableSpec<StandardRow> STANDARDS =
      new TableSpec<>(
          Columns.of(InputFile.STANDARDS)
              .text("!mold", "resin", "press")
              .decimal("!cycle_s", "load_s", "cure_s", "scrap_pct")
              .whole("startup_shots")
              .decimal("operators")
              .build(),
          MoldTables::standard,
          r ->
              "the standard of mold \""
                  + r.mold()
                  + "\", resin \""
                  + r.resin()
                  + "\", press \""
                  + r.press()
                  + "\"");

  private MoldTables() {}

  private static MoldRow mold(Fields f) {
    Mold.Use use =
        new Mold.Use(
            f.list("makes"),
            f.choice("hub", Hub.class),
            lower(f.list("insert_kinds")),
            f.list("threads"),
            tooling(f));
    if (use.makes().isEmpty() && !f.text("makes").isEmpty()) {
      f.fault("makes", "empty", f.seen("makes") + " names nothing; expected heads or items");
    }
    return new MoldRow(
        f.at(),
        f.id("mold"),
        use,
        cavities(f),
        body(f),
        RunsOnReader.read(f),
        f.decimal("cycle_s", 0.1, LONGEST_CYCLE),
        f.flag("hand_load"),
        f.flag("dummy_plugs"),
        f.whole("change_min", 0, 100_000),
        f.time("available_from"),
        f.text("owner"),
        service(f),
        devices(f));
  }

  private static MoldRow.Service service(Fields f) {
    return new MoldRow.Service(
        f.whole("shots_to_service", -MOST_SHOTS, MOST_SHOTS),
        f.whole("service_shots", 1, MOST_SHOTS),
        f.scaled("service_h", 60, 8784, RoundingMode.CEILING));
  }

  private static List<String> devices(Fields f) {
    List<String> devices = f.list("devices");
    if (new HashSet<>(devices).size() < devices.size()) {
      f.fault("devices", "twice", f.seen("devices") + " names one twice; expected each once");
    }
    return devices;
  }

  private static List<String> lower(List<String> words) {
    return words.stream().map(w -> w.toLowerCase(Locale.ROOT)).toList();
  }

  private static Map<String, String> tooling(Fields f) {
    Map<String, String> tooling = new LinkedHashMap<>();
    for (String text : f.list("tooling")) {
      int sign = text.indexOf('=');
      String thread = sign < 0 ? "" : text.substring(0, sign).strip();
      String set = sign < 0 ? "" : text.substring(sign + 1).strip();
      if (thread.isEmpty() || set.isEmpty() || tooling.putIfAbsent(thread, set) != null) {
        f.fault(
            "tooling",
            "set",
            f.seen("tooling") + " has \"" + text + "\"; expected thread=set, each thread once");
      }
    }
    return tooling;
  }

  private static Mold.Cavities cavities(Fields f) {
    int live = f.requiredWhole("live_cavities", 1, 1000);
    OptionalInt built = f.whole("cavities", 1, 1000);
    if (built.isPresent() && built.getAsInt() < live) {
      f.fault(
          "live_cavities",
          "order",
          f.seen("live_cavities") + " is more than " + f.seen("cavities") + "; expected no more");
    }
    return new Mold.Cavities(
        built.orElse(live),
        live,
        f.size("part_g"),
        f.decimal("runner_g", 0, Fields.LARGEST),
        f.size("part_area_cm2"),
        f.decimal("runner_area_cm2", 0, Fields.LARGEST),
        f.size("wall_mm"));
  }

  private static Mold.Body body(Fields f) {
    return new Mold.Body(
        f.choice("orientation", Orientation.class),
        f.size("length_mm"),
        f.size("width_mm"),
        f.size("height_mm"),
        f.decimal("opening_mm", 0, Fields.LARGEST),
        f.size("weight_kg"),
        f.text("place"));
  }

  private static StandardRow standard(Fields f) {
    f.required("cycle_s");
    return new StandardRow(
        f.at(),
        f.id("mold"),
        f.text("resin"),
        f.text("press"),
        f.decimal("cycle_s", 0.1, LONGEST_CYCLE).orElse(1),
        f.decimal("load_s", 0, LONGEST_CYCLE),
        f.decimal("cure_s", 0, LONGEST_CYCLE),
        f.decimal("scrap_pct", 0, 99),
        f.whole("startup_shots", 0, 100_000),
        f.scaled("operators", 1000, 1000, RoundingMode.HALF_UP));
  }
}
