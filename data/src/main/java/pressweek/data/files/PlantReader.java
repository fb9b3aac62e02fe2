package pressweek.data.files;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import pressweek.data.files.PlantRow.ExtraHours;
import pressweek.data.files.PlantRow.Fit;
import pressweek.data.files.PlantRow.Food;
import pressweek.data.files.PlantRow.Heat;
import pressweek.data.files.PlantRow.HoursRule;
import pressweek.data.files.PlantRow.Loading;
import pressweek.data.files.PlantRow.RunFigures;
import pressweek.data.problem.Bringing;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Shipping;
import pressweek.data.problem.Terms;

/**
 * Reads {@code plant.json}; what is missing or wrong in it comes from {@code plant-defaults.json}.
 */
final class PlantReader {
  static final int DAY_MIN = 1440;
  static final int YEAR_MIN = 366 * DAY_MIN;

  private final JsonFields plant;
  private final JsonFields rates;
  private final JsonFields.Notes notes;

  private PlantReader(JsonFields plant) {
    this.plant = plant;
    this.rates = plant.within("rates");
    this.notes = plant.notes();
  }

  /** The plant's figures; all of them defaults when it gives none. */
  static PlantRow read(Optional<JsonTree.Obj> given, Findings findings) {
    JsonFields.Notes notes =
        new JsonFields.Notes(InputFile.PLANT.fileName(), findings, new HashMap<>());
    JsonTree.Obj tree = given.orElseGet(() -> new JsonTree.Obj(0, Map.of()));
    return new PlantReader(new JsonFields(notes, "", tree, defaults())).row();
  }

  /** Every key with its default. */
  static JsonTree.Obj defaults() {
    String name = "plant-defaults.json";
    try (Reader text =
        new InputStreamReader(
            Objects.requireNonNull(PlantReader.class.getResourceAsStream(name)),
            StandardCharsets.UTF_8)) {
      return JsonReader.read(name, text)
          .object()
          .orElseThrow(() -> new IllegalStateException(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private PlantRow row() {
    Times times = times();
    ShiftReader shifts = new ShiftReader(plant, times);
    PlantRow.WorkHours hours = hours(times, shifts);
    JsonFields promised = plant.within("promised");
    return new PlantRow(
        plant.text("name"),
        hours,
        plant.decimal("efficiency_pct", 1, 100),
        crew(shifts),
        shipping(),
        extraHours(),
        rates(),
        changes(),
        fit(),
        run(),
        heat(),
        food(),
        terms(),
        service(),
        plant.within("split").decimal("over_h", 0, 8784),
        bringing(),
        promised.whole("move_tolerance_min", 0, YEAR_MIN),
        plant.whole("barrel_default_g", 1, 1_000_000),
        UncertaintyReader.read(plant.within("uncertainty")),
        plant.within("learning").whole("least_runs", 6, 1000),
        notes.given());
  }

  private Times times() {
    return plant.read(
        "date_format",
        "a pattern of year, month and day such as \"dd.MM.yyyy\"",
        v -> JsonFields.asText(v).flatMap(Times::of));
  }

  private PlantRow.WorkHours hours(Times times, ShiftReader shifts) {
    ZoneId zone = plant.read("zone", "a time zone such as \"Europe/Berlin\"", PlantReader::zone);
    Optional<When> start =
        plant.read(
            "plan_start", "\"now\" or a time such as \"2026-11-30T06:00\"", v -> start(v, times));
    return new PlantRow.WorkHours(
        zone,
        start,
        plant.whole("horizon_days", 1, 366),
        plant.text("date_format"),
        shifts.shifts(),
        shifts.calendars(),
        shifts.closed(),
        shifts.opening());
  }

  private static Optional<ZoneId> zone(JsonTree value) {
    return JsonFields.asText(value)
        .flatMap(
            text -> {
              try {
                return Optional.of(ZoneId.of(text));
              } catch (DateTimeException e) {
                return Optional.empty();
              }
            });
  }

  private static Optional<Optional<When>> start(JsonTree value, Times times) {
    Optional<String> text = JsonFields.asText(value);
    if (text.filter(t -> t.isEmpty() || t.startsWith("now")).isPresent()) {
      return Optional.of(Optional.empty());
    }
    return text.flatMap(times::parse).filter(Times::plausible).map(when -> Optional.of(when));
  }

  private Crew crew(ShiftReader shifts) {
    JsonFields crew = plant.within("crew");
    return new Crew(
        shifts.gaveSetters(),
        shifts.gaveOperators(),
        crew.whole("setter_share_pct", 1, 100),
        crew.flag("change_may_span_gap"),
        crew.whole("insert_lead_min", 0, YEAR_MIN));
  }

  private Shipping shipping() {
    JsonFields shipping = plant.within("shipping");
    return new Shipping(
        shipping.read("days", "a list of days such as [\"MON\", \"TUE\"]", ShiftReader::days),
        shipping.time("cut_off"));
  }

  private ExtraHours extraHours() {
    int after = plant.within("shipping").scaled("after_molding_h", 60, 8784, RoundingMode.CEILING);
    return new ExtraHours(after, hoursRules("after_h"), hoursRules("before_h"));
  }

  private List<HoursRule> hoursRules(String key) {
    List<HoursRule> rules = new ArrayList<>();
    for (JsonTree.Obj rule : plant.objects(key)) {
      JsonTree.Obj shape =
          new JsonTree.Obj(
              0,
              Map.of(
                  "when",
                  new JsonTree.Obj(0, Map.of()),
                  "h",
                  new JsonTree.Num(0, java.math.BigDecimal.ZERO)));
      JsonFields fields = new JsonFields(notes, plant.path(key) + ".", rule, shape);
      Optional<JsonTree.Obj> when =
          rule.field("when").filter(JsonTree.Obj.class::isInstance).map(JsonTree.Obj.class::cast);
      if (when.isEmpty() || when.get().fields().isEmpty() || !fields.gave("h")) {
        plant.wrong(key, rule, "\"when\" with attributes, and \"h\"");
        continue;
      }
      rules.add(
          new HoursRule(
              Conditions.read(notes, plant.path(key) + ".when", when.get()),
              fields.scaled("h", 60, 8784, RoundingMode.CEILING)));
    }
    return rules;
  }

  private Rates rates() {
    return new Rates(
        rates.read(
            "currency", "a currency of three letters such as \"EUR\"", PlantReader::currency),
        plant.gave("rates"),
        rates.money("late_step"),
        rates.money("late_day"),
        rates.money("change_h"),
        rates.money("purge_kg"),
        rates.money("kept_press_h"),
        rates.money("unplaced"));
  }

  /** What an earlier plan had is known only where a plan is made anew. */
  private Terms terms() {
    return new Terms(
        plant.within("campaign").scaled("min_h", 60, 8784, RoundingMode.CEILING),
        rates.money("short_campaign_h"),
        rates.money("close_h"),
        rates.money("moved_run"),
        List.of());
  }

  private static Optional<String> currency(JsonTree value) {
    return JsonFields.asText(value).filter(t -> t.matches("[A-Z]{3}"));
  }

  private ChangeTable changes() {
    JsonFields change = plant.within("change");
    JsonFields resin = change.within("resin");
    JsonFields colour = change.within("colour");
    return new ChangeTable(
        change.whole("mold_min", 0, YEAR_MIN),
        change.whole("dismount_pct", 0, 100),
        change.whole("tooling_min", 0, YEAR_MIN),
        new ChangeTable.ResinStep(
            resin.whole("same_min", 0, YEAR_MIN),
            resin.whole("up_min", 0, YEAR_MIN),
            resin.whole("down_min", 0, YEAR_MIN),
            resin.whole("tolerance_c", 0, 500),
            resin.scaled("purge", 1000, 1000, RoundingMode.HALF_UP)),
        new ChangeTable.ColourStep(
            colour.whole("darker_min", 0, YEAR_MIN),
            colour.whole("lighter_min", 0, YEAR_MIN),
            colour.whole("lighter_per_100_min", 0, YEAR_MIN),
            colour.whole("unknown_min", 0, YEAR_MIN),
            colour.scaled("purge_darker", 1000, 1000, RoundingMode.HALF_UP),
            colour.scaled("purge_lighter", 1000, 1000, RoundingMode.HALF_UP)),
        change.whole("food_clear_min", 0, YEAR_MIN),
        change.whole("first_article_min", 0, YEAR_MIN),
        change.read("colour_work", "\"after\" or \"beside\"", PlantReader::beside));
  }

  private static Optional<Boolean> beside(JsonTree value) {
    return JsonFields.asText(value)
        .filter(t -> t.equals("after") || t.equals("beside"))
        .map("beside"::equals);
  }

  private Fit fit() {
    JsonFields fit = plant.within("fit");
    return new Fit(
        fit.decimal("cavity_kn_cm2", 0.01, 100),
        fit.decimal("clamp_factor", 0.1, 10),
        fit.decimal("shot_low_pct", 0, 100),
        fit.decimal("shot_high_pct", 0, 100),
        fit.decimal("shot_stop_pct", 0, 100),
        fit.decimal("ps_density", 0.1, 10),
        fit.decimal("opening_clearance_mm", 0, 10_000),
        fit.decimal("barrel_inventory", 0.1, 20));
  }

  private RunFigures run() {
    JsonFields run = plant.within("run");
    return new RunFigures(
        run.decimal("scrap_pct", 0, 99),
        run.whole("startup_shots", 0, 1_000_000),
        run.scaled("operators_hand_load", 1000, 1000, RoundingMode.HALF_UP),
        run.scaled("operators_other", 1000, 1000, RoundingMode.HALF_UP),
        new Loading(
            run.decimal("load_s_per_insert", 0, 86_400),
            run.decimal("unload_s", 0, 86_400),
            run.decimal("index_s", 0, 86_400)),
        run.decimal("insert_loss_pct", 0, 99),
        run.whole("samples", 0, 1_000_000),
        run.whole("carton_multiple", 1, 1_000_000));
  }

  private Heat heat() {
    JsonFields drying = plant.within("drying");
    JsonFields preheat = plant.within("preheat");
    return new Heat(
        drying.decimal("cold_start_h", 0, 24),
        drying.whole("clean_min", 0, YEAR_MIN),
        drying.flag("planned"),
        preheat.decimal("c", 0, 1000),
        preheat.decimal("min", 0, 1440));
  }

  private PlantRow.Service service() {
    JsonFields molds = plant.within("molds");
    return new PlantRow.Service(
        molds.scaled("service_h", 60, 8784, RoundingMode.CEILING),
        molds.whole("service_shots", 0, 1_000_000_000));
  }

  private Bringing bringing() {
    JsonFields bring = plant.within("bring");
    return new Bringing(
        bring.read("by", "\"pieces\", \"cartons\" or \"bins\"", PlantReader::amount),
        bring.whole("carton_pieces", 1, 1_000_000));
  }

  private static Optional<Bringing.By> amount(JsonTree value) {
    Optional<String> text = JsonFields.asText(value);
    return Arrays.stream(Bringing.By.values())
        .filter(by -> text.filter(Columns.word(by)::equals).isPresent())
        .findFirst();
  }

  private Food food() {
    JsonFields food = plant.within("food");
    return new Food(
        food.texts("needs").stream().map(t -> t.toLowerCase(java.util.Locale.ROOT)).toList(),
        food.objects("kept_with_food").stream()
            .map(o -> Conditions.read(notes, food.path("kept_with_food"), o))
            .toList());
  }
}
