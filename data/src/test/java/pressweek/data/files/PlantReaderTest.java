package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Break;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Crew;
import pressweek.data.problem.Item;
import pressweek.data.problem.Origin;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Shipping;

class PlantReaderTest {
  private static final Set<DayOfWeek> WORKDAYS = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

  private final Findings findings = new Findings();

  private PlantRow read(String json) {
    try {
      JsonReading reading = JsonReader.read("plant.json", new StringReader(json));
      assertThat(reading.findings()).isEmpty();
      return PlantReader.read(reading.object(), findings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<String> findings() {
    return findings.list().stream().map(InputError::toString).toList();
  }

  @Test
  void aPlantThatSaysNothingHasTheDefaults() {
    PlantRow plant = read("{}");

    assertThat(findings()).isEmpty();
    assertThat(plant.given()).isEmpty();
    assertThat(plant.hours().planStart()).isEmpty();
    assertThat(plant.hours().horizonDays()).isEqualTo(7);
    assertThat(plant.hours().shifts())
        .containsExactly(
            new Shift(
                "early",
                WORKDAYS,
                LocalTime.of(6, 0),
                LocalTime.of(14, 0),
                List.of(),
                0,
                0,
                OptionalInt.empty()),
            new Shift(
                "late",
                WORKDAYS,
                LocalTime.of(14, 0),
                LocalTime.of(22, 0),
                List.of(),
                0,
                0,
                OptionalInt.empty()));
    assertThat(plant.hours().calendars())
        .containsExactly(Map.entry("two-shift", List.of("early", "late")));
    assertThat(plant.crew()).isEqualTo(new Crew(false, false, 80, false, 30));
    assertThat(plant.shipping()).isEqualTo(new Shipping(WORKDAYS, LocalTime.of(15, 0)));
    assertThat(plant.rates())
        .isEqualTo(
            new Rates(
                "EUR", false, 10_000_000, 6_000_000, 4_500_000, 300_000, 2_500_000, 40_000_000));
    assertThat(plant.changes())
        .isEqualTo(
            new ChangeTable(
                60,
                40,
                20,
                new ChangeTable.ResinStep(20, 20, 40, 30, 3000),
                new ChangeTable.ColourStep(10, 30, 45, 40, 1500, 4000),
                30,
                10,
                false));
    assertThat(plant.fit()).isEqualTo(new PlantRow.Fit(4.5, 1.1, 20, 65, 80, 1.05, 75, 1.4));
    assertThat(plant.run())
        .isEqualTo(
            new PlantRow.RunFigures(3, 10, 1000, 250, new PlantRow.Loading(3, 5, 2), 0.5, 5, 1));
    assertThat(plant.heat()).isEqualTo(new PlantRow.Heat(1, 20, true, 120, 5));
    assertThat(plant.food()).isEqualTo(new PlantRow.Food(List.of("food"), List.of()));
    assertThat(plant.extraHours()).isEqualTo(new PlantRow.ExtraHours(0, List.of(), List.of()));
    assertThat(plant.moveToleranceMin()).isEqualTo(60);
    assertThat(plant.barrelDefaultG()).isEqualTo(250);
    assertThat(plant.efficiencyPct()).isEqualTo(85);
  }

  private static final String OWN =
      """
      {
        "name": "Quillback Grips", "zone": "Europe/Berlin", "plan_start": "2026-11-30T06:00", "horizon_days": 5,
        "date_format": "dd.MM.yyyy",
        "shifts": [
          {"name": "night", "days": ["SUN", "Monday"], "from": "22:00", "to": "06:00",
           "breaks": [{"from": "02:00", "to": "02:30"}], "setters": 1, "operators": 2.5}
        ],
        "closed": ["25.12.2026", "2026-12-26"],
        "crew": {"insert_lead_min": 45, "change_may_span_gap": true},
        "shipping": {"cut_off": "17:30", "after_molding_h": 1.51},
        "after_h": [{"when": {"finish": "printed|plated"}, "h": 24}],
        "rates": {"currency": "USD", "late_step": 12.34567},
        "change": {"colour_work": "beside", "resin": {"purge": 2.5}},
        "food": {"kept_with_food": [{"insert_material": "A2|A4", "hub": "solid"}]},
        "barrel_default_g": 300
      }
      """;

  @Test
  void whatThePlantSaysIsTakenAndItsLineKept() {
    PlantRow plant = read(OWN);

    assertThat(findings()).isEmpty();
    assertThat(plant.extraHours().afterMoldingMin()).isEqualTo(91);
    assertThat(plant.extraHours().after())
        .containsExactly(
            new PlantRow.HoursRule(
                new PlantRow.Condition(Map.of("finish", List.of("printed", "plated"))), 1440));
    assertThat(plant.rates().currency()).isEqualTo("USD");
    assertThat(plant.rates().shown()).isTrue();
    assertThat(plant.rates().lateStep()).isEqualTo(1_234_567);
    assertThat(plant.rates().lateDay()).isEqualTo(6_000_000);
    assertThat(plant.changes().colourWorkBeside()).isTrue();
    assertThat(plant.changes().resin().purgeThousandths()).isEqualTo(2500);
    assertThat(plant.gave("crew.insert_lead_min")).isTrue();
    assertThat(plant.gave("crew.setter_share_pct")).isFalse();
    assertThat(plant.at("shipping.cut_off")).isEqualTo(new At("plant.json", 10));
    assertThat(plant.at("efficiency_pct")).isEqualTo(new At("plant.json", 0));
  }

  @Test
  void theHoursThatThePlantSaysAreTaken() {
    PlantRow plant = read(OWN);

    assertThat(plant.hours().planStart())
        .contains(new When.Local(LocalDateTime.of(2026, 11, 30, 6, 0)));
    assertThat(plant.hours().shifts())
        .containsExactly(
            new Shift(
                "night",
                EnumSet.of(DayOfWeek.SUNDAY, DayOfWeek.MONDAY),
                LocalTime.of(22, 0),
                LocalTime.of(6, 0),
                List.of(new Break(LocalTime.of(2, 0), LocalTime.of(2, 30))),
                1,
                2500,
                OptionalInt.empty()));
    assertThat(plant.hours().calendars()).isEmpty();
    assertThat(plant.hours().closed())
        .containsExactly(LocalDate.of(2026, 12, 25), LocalDate.of(2026, 12, 26));
    assertThat(plant.crew()).isEqualTo(new Crew(true, true, 80, true, 45));
  }

  @Test
  void inspectorsAreKnownOnlyWhereTheShiftSaysThem() {
    PlantRow plant =
        read(
            """
            {"calendars": {"all": ["a", "b", "c"]}, "shifts": [
              {"name": "a", "days": ["MON"], "from": "06:00", "to": "14:00", "inspectors": 1},
              {"name": "b", "days": ["MON"], "from": "14:00", "to": "22:00", "inspectors": 0},
              {"name": "c", "days": ["TUE"], "from": "06:00", "to": "14:00"}]}
            """);

    assertThat(findings()).isEmpty();
    assertThat(plant.hours().shifts())
        .extracting(Shift::inspectors)
        .containsExactly(OptionalInt.of(1), OptionalInt.of(0), OptionalInt.empty());
    assertThat(plant.crew().settersChecked()).isFalse();
  }

  @Test
  void aConditionFitsWhenEveryAttributeDoes() {
    PlantRow.Condition condition =
        new PlantRow.Condition(
            Map.of("insert_material", List.of("A2", "A4"), "hub", List.of("solid")));

    assertThat(condition.fits(item("A2", "solid"))).isTrue();
    assertThat(condition.fits(item("A4", "solid"))).isTrue();
    assertThat(condition.fits(item("A2", "cored"))).isFalse();
    assertThat(condition.fits(new Item("x", List.of()))).isFalse();
  }

  private static Item item(String material, String hub) {
    return new Item(
        "x",
        List.of(
            new Attribute("insert_material", material, Origin.CODE, ""),
            new Attribute("hub", hub, Origin.CODE, "")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      textBlock =
          """
          {"zoen": "UTC"} @ plant.json:1: key "zoen" is not known and not used; did you mean "zone"?
          {"crew": {"setters": 2}} @ plant.json:1: key "crew.setters" is not known and not used; expected one of setter_share_pct, change_may_span_gap, insert_lead_min
          {"zone": "Mars"} @ plant.json:1: zone is the text "Mars"; expected a time zone such as "Europe/Berlin"
          {"efficiency_pct": "85"} @ plant.json:1: efficiency_pct is the text "85"; expected a number from 1 to 100
          {"efficiency_pct": 0} @ plant.json:1: efficiency_pct is the number 0; expected a number from 1 to 100
          {"horizon_days": 1e999999} @ plant.json:1: horizon_days is the number 1E+999999; expected a whole number from 1 to 366
          {"horizon_days": 7.5} @ plant.json:1: horizon_days is the number 7.5; expected a whole number from 1 to 366
          {"plan_start": "31.02.2026"} @ plant.json:1: plan_start is the text "31.02.2026"; expected "now" or a time such as "2026-11-30T06:00"
          {"date_format": "dd.MM"} @ plant.json:1: date_format is the text "dd.MM"; expected a pattern of year, month and day such as "dd.MM.yyyy"
          {"closed": ["Xmas"]} @ plant.json:1: closed is the text "Xmas"; expected a list of dates, yyyy-MM-dd
          {"crew": 5} @ plant.json:1: crew is the number 5; expected an object
          {"crew": {"change_may_span_gap": "yes"}} @ plant.json:1: crew.change_may_span_gap is the text "yes"; expected true or false
          {"shipping": {"days": ["MON", "FUN"]}} @ plant.json:1: shipping.days is a list; expected a list of days such as ["MON", "TUE"]
          {"shipping": {"cut_off": "3pm"}} @ plant.json:1: shipping.cut_off is the text "3pm"; expected a time of day such as "06:00"
          {"rates": {"currency": "Euro"}} @ plant.json:1: rates.currency is the text "Euro"; expected a currency of three letters such as "EUR"
          {"rates": {"late_day": -1}} @ plant.json:1: rates.late_day is the number -1; expected a number from 0 to 100,000,000
          {"change": {"colour_work": "never"}} @ plant.json:1: change.colour_work is the text "never"; expected "after" or "beside"
          {"after_h": [{"h": 4}]} @ plant.json:1: after_h is an object; expected "when" with attributes, and "h"
          {"after_h": [{"when": {"finish": {}}, "h": 4}]} @ plant.json:1: after_h.when.finish is an object; expected values of the attribute
          {"food": {"needs": [1]}} @ plant.json:1: food.needs is the number 1; expected a list of texts
          {"shifts": []} @ plant.json:1: shifts is a list; expected at least one shift
          {"shifts": [{"name": "a"}]} @ plant.json:1: a shift has no "days"; expected name, days, from and to
          {"shifts": [{"name": "a", "days": ["MON"], "from": "06:00", "to": "14:00", "breaks": ["10:00"]}]} @ plant.json:1: shifts.breaks is the text "10:00"; expected a list of breaks such as {"from": "10:00", "to": "10:15"}
          {"shifts": [{"name": "a", "days": ["MON"], "from": "06:00", "to": "14:00", "breaks": [{"from": "13:30", "to": "14:30"}]}]} @ plant.json:1: shift "a": break 13:30-14:30 is not within the shift, 06:00-14:00; expected a break within it
          {"shifts": [{"name": "a", "days": ["MON"], "from": "22:00", "to": "06:00", "breaks": [{"from": "21:00", "to": "22:30"}]}]} @ plant.json:1: shift "a": break 21:00-22:30 is not within the shift, 22:00-06:00; expected a break within it
          {"shifts": [{"name": "a", "days": ["MON"], "from": "06:00", "to": "14:00", "breaks": [{"from": "10:00", "to": "10:20"}, {"from": "10:15", "to": "10:30"}]}]} @ plant.json:1: shift "a": breaks 10:00-10:20 and 10:15-10:30 overlap; expected one after the other
          {"shifts": [{"name": "a", "days": ["MON"], "from": "06:00", "to": "14:00"}, {"name": "a", "days": ["TUE"], "from": "06:00", "to": "14:00"}]} @ plant.json:1: shift "a" is also in line 1; expected a name for each
          {"shifts": [{"name": "a", "days": ["MON"], "from": "06:00", "to": "14:30"}, {"name": "b", "days": ["MON"], "from": "14:00", "to": "22:00"}]} @ plant.json:1: shifts "a" (MON 06:00-14:30) and "b" (MON 14:00-22:00) overlap; expected calendars that keep them apart
          {"shifts": [{"name": "a", "days": ["SUN"], "from": "22:00", "to": "07:00"}, {"name": "b", "days": ["MON"], "from": "06:00", "to": "14:00"}], "calendars": {"x": ["a", "b"]}} @ plant.json:1: calendars.x: shifts "a" (SUN 22:00-07:00) and "b" (MON 06:00-14:00) overlap; expected one shift at a time
          {"calendars": {"x": ["early", "night"]}} @ plant.json:1: calendars.x has the text "night"; expected each of these at most once: early, late
          """)
  void whatIsWrongIsNamedAndTheDefaultTaken(String json, String message) {
    PlantRow plant = read(json);

    assertThat(findings()).containsExactly(message);
    assertThat(plant.hours().shifts()).isNotEmpty();
    assertThat(plant.efficiencyPct()).isEqualTo(85);
  }

  @Test
  void shiftsOfDifferentCalendarsMayOverlap() {
    read(
        """
        {"shifts": [
          {"name": "day", "days": ["MON"], "from": "06:00", "to": "18:00"},
          {"name": "early", "days": ["MON"], "from": "06:00", "to": "14:00"},
          {"name": "late", "days": ["MON"], "from": "14:00", "to": "22:00"}],
         "calendars": {"long": ["day"], "two": ["early", "late"]}}
        """);

    assertThat(findings()).isEmpty();
  }

  @Test
  void aShiftThatEndsWhenItBeginsIsADayLong() {
    PlantRow plant =
        read(
            """
            {"shifts": [{"name": "all", "days": ["MON", "TUE"], "from": "06:00", "to": "06:00",
              "breaks": [{"from": "05:30", "to": "06:00"}]}]}
            """);

    assertThat(findings()).isEmpty();
    assertThat(plant.hours().shifts().get(0).breaks()).hasSize(1);
  }

  @Test
  void theDocumentationShowsTheDefaults() throws IOException {
    String page = Files.readString(Path.of("../docs/input-files.md"));
    int block = page.indexOf("```json") + "```json".length();
    String shown = page.substring(block, page.indexOf("```", block));
    Optional<JsonTree.Obj> documented = JsonReader.read("page", new StringReader(shown)).object();

    assertThat(documented.map(d -> without(d, EXAMPLES)))
        .contains(without(PlantReader.defaults(), EXAMPLES));
  }

  /** Keys whose value in the documentation is an example. */
  private static final Set<String> EXAMPLES =
      Set.of("shifts", "closed", "after_h", "before_h", "kept_with_food");

  private static JsonTree.Obj without(JsonTree.Obj object, Set<String> keys) {
    Map<String, JsonTree> kept = new java.util.TreeMap<>();
    object
        .fields()
        .forEach(
            (key, value) -> {
              if (!keys.contains(key)) {
                kept.put(key, lineless(value, keys));
              }
            });
    return new JsonTree.Obj(0, kept);
  }

  private static JsonTree lineless(JsonTree value, Set<String> keys) {
    if (value instanceof JsonTree.Obj object) {
      return without(object, keys);
    }
    if (value instanceof JsonTree.Arr list) {
      return new JsonTree.Arr(0, list.items().stream().map(i -> lineless(i, keys)).toList());
    }
    return value instanceof JsonTree.Num number
        ? new JsonTree.Num(0, number.value().stripTrailingZeros())
        : new JsonTree.Text(0, value.kind());
  }
}
