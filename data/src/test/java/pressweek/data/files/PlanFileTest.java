package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Drying;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Link;
import pressweek.data.problem.MoldService;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Surplus;
import pressweek.data.problem.Terms;
import pressweek.data.problem.Trial;

class PlanFileTest {
  @TempDir private Path folder;

  @Test
  void aPlanIsReadAsItWasWritten() throws IOException {
    for (int seed = 0; seed < 40; seed++) {
      Plan plan = new RandomRecords(seed).record(Plan.class);
      Path file = folder.resolve("plan.json");

      PlanFile.write(plan, file);

      PlanFile.Reading reading = PlanFile.read(file);
      assertThat(reading.errors()).isEmpty();
      assertThat(reading.plan()).contains(plan);
    }
  }

  @Test
  void thePlanThatIsReadGivesTheSameBytes() throws IOException {
    Path first = folder.resolve("first.json");
    Path second = folder.resolve("second.json");
    PlanFile.write(new RandomRecords(3).record(Plan.class), first);

    PlanFile.write(PlanFile.read(first).plan().orElseThrow(), second);

    assertThat(second).hasSameTextualContentAs(first);
  }

  @Test
  void timesHaveThePlantsOffset() throws IOException {
    Path file = folder.resolve("deep/down/plan.json");
    PlanFile.write(smallPlan(), file);

    String text = Files.readString(file);
    assertThat(text)
        .startsWith("{\n \"schema\" : \"pressweek-plan/1\",\n")
        .contains("\"need_by\" : \"2026-11-30T00:30+01:00\"")
        .contains("\"receipt\" : \"\"")
        .contains("\"kinds\" : [\n     \"mold\",\n     \"food-clearance\"\n    ]")
        .endsWith("}\n");
    try (Stream<Path> files = Files.list(file.getParent())) {
      assertThat(files).containsExactly(file);
    }
  }

  @Test
  void aPlanTakesThePlaceOfTheOneBefore() throws IOException {
    Path file = folder.resolve("plan.json");
    Files.writeString(file, "old");

    PlanFile.write(smallPlan(), file);

    assertThat(PlanFile.read(file).plan()).contains(smallPlan());
  }

  @Test
  void aPlanOfBeforePreparationWasKeptIsRead() throws IOException {
    Path file = folder.resolve("plan.json");
    PlanFile.write(smallPlan(), file);
    assertThat(file).content().doesNotContain("\"preparation\"", "\"inspectors\"", "\"people\"");
    Plan plan = PlanFile.read(file).plan().orElseThrow();
    assertThat(plan.problem().materials().preparation()).isEmpty();
    assertThat(plan.problem().plant().crew().people()).isEmpty();
    assertThat(plan.problem().plant().hours().shifts())
        .allSatisfy(s -> assertThat(s.inspectors()).isEmpty());
  }

  @Test
  void aPlanOfBeforeArrangementsWereKeptIsRead() throws IOException {
    Path file = folder.resolve("plan.json");
    PlanFile.write(smallPlan(), file);
    assertThat(file).content().doesNotContain("\"arrangements\"");
    assertThat(PlanFile.read(file).plan().orElseThrow().problem().arranged())
        .isEqualTo(Arrangements.NONE);
  }

  @Test
  void everythingThatIsArrangedIsReadAsItWasWritten() throws IOException {
    int start = SmallPlant.START;
    Arrangements all =
        new Arrangements(
            List.of(new CountedThing("PIN", 2)),
            List.of(new DeviceNeed("M1", "OIL")),
            List.of(new MoldService("M1", -40, 50_000, 480)),
            List.of(
                new Trial("P1", "M2", start + 60, start + 120, 1, "new gate", OptionalInt.empty())),
            List.of(new Link("A/1/2", "A/1/1", 240)),
            List.of(new Surplus("M2", "B", 2)),
            new Opening(List.of(new Opening.Overtime("all", 21_000_000)), List.of("ghost")),
            new Arrangements.Settled(
                new Drying(
                    List.of(new Drying.Feed("D1", List.of("P1", "P2"))),
                    List.of(new Drying.Dried("ABS", "RED", "ABS", 180)),
                    20),
                new Terms(240, 1, 2, 3, List.of(new Terms.Place("A/1", "P1", start + 30)))));
    Plan small = smallPlan();
    Plan plan =
        new Plan(
            small.head(),
            small.problem().with(all),
            small.runs(),
            small.dismounts(),
            small.pulls(),
            small.unplaced(),
            small.unplacedCharges(),
            small.figures());
    Path file = folder.resolve("plan.json");
    PlanFile.write(plan, file);
    assertThat(PlanFile.read(file).plan().orElseThrow().problem().arranged()).isEqualTo(all);
    assertThat(file)
        .content()
        .contains("\"from\" : \"2026-11-30T02:00+01:00\"", "\"shots_left\" : -40");
  }

  private static Plan smallPlan() {
    int start = SmallPlant.START;
    Settings settings = new Settings(10, 0, 1);
    return new Plan(
        new Head("2026-W49/1", "", start, Map.of("orders.csv", "00"), settings, List.of(), false),
        new SmallPlant()
            .zone(ZoneId.of("Europe/Berlin"))
            .job(JobBuilder.job("A").on("P1", "M1", 90))
            .build(),
        List.of(smallRun(start)),
        List.of(),
        List.of(new Pull("R001", "P1", start - 30, "I1", "", "", 0, 5)),
        List.of(),
        List.of(),
        new Figures(1, 0, 0, 0, 1, 60, 0, Map.of(Rule.CHANGE, 1L)));
  }

  private static Run smallRun(int start) {
    Setup to = new Setup("M1", "", "PP", "BLK");
    List<ChangeKind> kinds = List.of(ChangeKind.MOLD, ChangeKind.FOOD_CLEARANCE);
    Change change = new Change(new Setup("", "", "", ""), to, kinds, start - 60, start, 60, 0);
    List<Charge> charges = List.of(new Charge(Rule.CHANGE, 1, "x"));
    int end = start + 90;
    return new Run("R001", "A/1", "P1", "M1", 1, change, start, end, end, List.of(), charges);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      textBlock =
          """
          ''                                  @ plan.json: is empty; expected JSON
          []                                  @ plan.json:1: the file is a list; expected a plan
          {}                                  @ plan.json:1: key "schema" missing; expected "pressweek-plan/1"
          {"schema": "pressweek-plan/2"}      @ plan.json:1: schema is the text "pressweek-plan/2"; expected "pressweek-plan/1", as this version of Pressweek reads it
          {"schema": "pressweek-plan/1"}      @ plan.json:1: key "head" missing; expected it
          {"schema": "pressweek-plan/1", "head": 3} @ plan.json:1: head is the number 3; expected an object
          {"a": 1, "a": 2}                    @ plan.json:1: key "a" is also in line 1; expected it once
          """)
  void whatIsNoPlanIsNamed(String text, String message) throws IOException {
    Path file = Files.writeString(folder.resolve("plan.json"), text);

    PlanFile.Reading reading = PlanFile.read(file);

    assertThat(reading.plan()).isEmpty();
    assertThat(reading.errors()).extracting(InputError::toString).containsExactly(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      textBlock =
          """
          "seq" : 1,                  @ "seq" : 1.5,             @ runs[0].seq is the number 1.5; expected a whole number
          "seq" : 1,                  @ "seq" : 1e99,            @ runs[0].seq is the number 1E+99; expected a whole number
          "seq" : 1,                  @ "seq" : "1",             @ runs[0].seq is the text "1"; expected a number
          "press" : "P1",             @ "press" : 7,             @ runs[0].press is the number 7; expected a text
          "mold",                     @ "mould",                 @ runs[0].change.kinds[0] is the text "mould"; expected one of mold, tooling, resin, colour, food-clearance
          2026-11-30T01:00+01:00      @ 2026-11-30               @ runs[0].change.end is the text "2026-11-30"; expected a time with an offset
          "good" : 100                @ "good" : 0               @ problem.jobs[0].quantity: good must be at least 1 but was 0; expected what a planner writes
          """)
  void aTornPlanIsNamedWithItsLine(String from, String to, String message) throws IOException {
    Path file = folder.resolve("plan.json");
    PlanFile.write(smallPlan(), file);
    String text = Files.readString(file);
    int runs = from.contains("good") ? 0 : text.indexOf("\"runs\"");
    int at = text.indexOf(from, runs);
    Files.writeString(file, text.substring(0, at) + to + text.substring(at + from.length()));

    PlanFile.Reading reading = PlanFile.read(file);

    assertThat(reading.plan()).isEmpty();
    assertThat(reading.errors()).hasSize(1);
    InputError error = reading.errors().get(0);
    assertThat(error.message()).isEqualTo(message);
    assertThat(error.line()).isPositive();
  }

  @Test
  void brokenJsonIsNamedWithItsLine() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("plan.json"), "{\n \"schema\" : \"pressweek-plan/1\",\n oops\n}");

    assertThat(PlanFile.read(file).errors())
        .singleElement()
        .satisfies(e -> assertThat(e.toString()).startsWith("plan.json:3: not JSON: "));
  }

  @Test
  void aFileThatIsNotThereIsNotRead() {
    assertThatThrownBy(() -> PlanFile.read(folder.resolve("none.json")))
        .isInstanceOf(IOException.class);
  }

  /** A new component in minutes must be put among the times or be added here. */
  @Test
  void everyComponentInMinutesIsEitherATimeOrALength() {
    Set<String> lengths = new TreeSet<>();
    minutes(Plan.class, lengths, new java.util.HashSet<>());

    assertThat(lengths)
        .containsExactlyInAnyOrder(
            "afterMin",
            "campaignMin",
            "changeMin",
            "cleanMin",
            "darkerMin",
            "downMin",
            "firstArticleMin",
            "foodClearMin",
            "insertLeadMin",
            "lateMin",
            "lighterMin",
            "lighterPer100Min",
            "moldMin",
            "moveToleranceMin",
            "restMin",
            "runMin",
            "sameMin",
            "startupMin",
            "toolingMin",
            "unknownMin",
            "upMin");
  }

  private static void minutes(Type type, Set<String> lengths, Set<Class<?>> seen) {
    if (type instanceof ParameterizedType generic) {
      for (Type argument : generic.getActualTypeArguments()) {
        minutes(argument, lengths, seen);
      }
      return;
    }
    Class<?> plain = (Class<?>) type;
    if (!plain.isRecord() || !seen.add(plain)) {
      return;
    }
    for (RecordComponent component : plain.getRecordComponents()) {
      if (component.getName().endsWith("Min") && !PlanNames.time(component)) {
        lengths.add(component.getName());
      }
      minutes(component.getGenericType(), lengths, seen);
    }
  }
}
