package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * {@code promise} on the small plant, whose presses work from Monday to Friday from 06:00 to 14:00;
 * only V2 takes the mold of LV90, only H1 that of KB32.
 */
final class PromiseCommandTest {
  private static final Path SMALL = Path.of("../examples/quillback-small");
  private static final String LEVER = "LV90/M8-B/PP-SGR/ZN";

  @TempDir private Path out;
  private String now = "2026-11-30T06:00";

  @BeforeEach
  void plan() {
    Ran.pressweek("plan", SMALL.toString(), "--out", out.toString(), "--steps", "100");
  }

  private Ran promise(String item, String quantities, String need, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of(
                "promise",
                SMALL.toString(),
                item,
                quantities,
                "--need",
                need,
                "--plan",
                out.resolve("plan.json").toString(),
                "--now",
                now,
                "--steps",
                "50"));
    args.addAll(Arrays.asList(more));
    return Ran.pressweek(args.toArray(String[]::new));
  }

  private JsonNode json(String item, String quantities, String need) throws IOException {
    Path file = out.resolve("promise.json");
    promise(item, quantities, need, "--json", file.toString());
    return new ObjectMapper().readTree(Files.readString(file));
  }

  @Test
  void eachQuantityHasARowAndTheTextFits() {
    Ran ran = promise(LEVER, "50,200,5000", "2026-12-03");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(ran.out())
        .contains(LEVER + " by plan 2026-W49/1")
        .contains("needed by Thu 3 Dec 15:00")
        .containsPattern("\n +50  ")
        .containsPattern("\n +200  ")
        .containsPattern("\n +5000  cannot be made")
        .contains("Not checked")
        .contains("Nothing was ordered, and no plan was changed.");
  }

  @Test
  void whatCanBeThereWithNobodyLateSaysSoAndWithZero() throws IOException {
    Ran ran = promise(LEVER, "20", "2026-12-04");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(ran.out()).contains("no line becomes late or later").contains("on V2 with mold");
    JsonNode row = json(LEVER, "20", "2026-12-04").get("quantities").get(0);
    assertThat(row.get("in_time").asBoolean()).isTrue();
    assertThat(row.get("nobody_late").get("later").isEmpty()).isTrue();
    assertThat(row.get("nobody_late").get("findings").isEmpty()).isTrue();
  }

  @Test
  void theRulesAddUpToWhatItCosts() throws IOException {
    for (JsonNode row : json(LEVER, "50,400", "2026-12-02").get("quantities")) {
      for (String way : List.of("nobody_late", "by_need", "soonest")) {
        JsonNode offer = row.path(way);
        long sum = 0;
        for (JsonNode amount : offer.path("costs_more_by_rule")) {
          sum += amount.asLong();
        }
        assertThat(sum).as(way).isEqualTo(offer.path("costs_more").asLong());
      }
    }
  }

  @Test
  void aDateThatIsTooSoonIsPricedAndSaysWhoPays() throws IOException {
    JsonNode row = json(LEVER, "250", "2026-11-30T07:00").get("quantities").get(0);
    assertThat(row.get("in_time").asBoolean()).isFalse();
    assertThat(row.has("by_need")).isFalse();
    assertThat(row.get("soonest").get("ready").asText()).isGreaterThan("2026-11-30T07:00");
    Ran ran = promise(LEVER, "250", "2026-11-30T07:00");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.out()).contains("not ready by Mon 30 Nov 07:00");
  }

  @Test
  void whatWouldHelpIsNamedOnlyWhereItIsNotInTime() throws IOException {
    JsonNode rows = json(LEVER, "20,900", "2026-12-02").get("quantities");
    assertThat(rows.get(0).get("in_time").asBoolean()).isTrue();
    assertThat(rows.get(0).has("cures")).isFalse();
    assertThat(rows.get(1).get("in_time").asBoolean()).isFalse();
    JsonNode cures = rows.get(1).get("cures");
    assertThat(cures.get("changes").asInt()).isPositive();
    assertThat(cures.get("changes_tried")).hasSize(cures.get("changes").asInt());
    for (JsonNode help : cures.get("helping")) {
      assertThat(help.get("findings")).isEmpty();
    }
    Ran ran = promise(LEVER, "20,900", "2026-12-02");
    assertThat(ran.out()).contains("what would help").contains("none searched further");
    assertThat(ran.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void wordsWithOneReadingAreTaken() {
    Ran ran = promise("clamping lever, M8 blind, PP signal red, zinc", "20", "2026-12-04");
    assertThat(ran.out()).contains(LEVER + " by plan").contains("understood");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void wordsThatLeaveSomethingOpenAreListedAndNotGuessed() {
    Ran ran = promise("lever, black", "20", "2026-12-04");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.out()).contains(" 1. ").contains("ask").doesNotContain("by plan");
    assertThat(ran.err()).contains("the words do not say one item");
  }

  @Test
  void wordsThatNameAnotherNumberAreAskedBack() {
    Ran ran =
        promise("500 pcs clamping lever 90, M8 blind, PP signal red, zinc", "20", "2026-12-04");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("how many? the words say 500");
  }

  @Test
  void anItemThatCannotBeMadeSaysWhyAndWhatWouldCureIt() {
    Ran ran = promise("KB32/M8-S30/PP-BLK/ZN", "20", "2026-12-04");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.out()).contains("cannot be made").contains("cure: ");
  }

  @Test
  void anUnknownItemIsSaid() {
    Ran ran = promise("LV90/M8-B/PP-XXX/ZN", "20", "2026-12-04");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.out()).contains("^");
    assertThat(ran.err()).contains("is not known; expected a code of the guide");
  }

  @ParameterizedTest
  @ValueSource(strings = {"black", "M10", "steel"})
  void oneWordThatIsNoCodeIsReadAsWords(String word) {
    Ran ran = promise(word, "20", "2026-12-04");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.out()).contains(" 1. ").contains("which head style?");
    assertThat(ran.err()).contains("the words do not say one item").doesNotContain("is not known");
  }

  @Test
  void aWordThatNobodyKnowsIsNoItem() {
    Ran ran = promise("foobar", "20", "2026-12-04");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("item \"foobar\" is not known");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  "})
  void noItemIsSaid(String item) {
    Ran ran = promise(item, "20", "2026-12-04");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("an item is missing; expected its code");
    assertThat(ran.out()).isEmpty();
  }

  @Test
  void aNeedThatNothingIsDeclaredForIsRefusedWithTheNearest() {
    Ran ran = promise(LEVER, "20", "2026-12-04", "--needs", "rohs,foood,zoxic");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .contains("--needs \"foood\" is not known; expected one of food, rohs; did you mean food?")
        .contains("--needs \"zoxic\" is not known");
    assertThat(ran.out()).isEmpty();
  }

  @Test
  void aNeedIsTakenInAnyCase() {
    Ran ran = promise(LEVER, "20", "2026-12-04", "--needs", "FOOD");
    assertThat(ran.err()).doesNotContain("is not known");
    assertThat(ran.out()).contains("food record");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|2026-12-04|quantity \"0\" is not a number of pieces; expected one from 1",
        "-3|2026-12-04|quantity \"-3\" is not",
        "abc|2026-12-04|quantity \"abc\" is not",
        "5,|2026-12-04|quantity \"\" is not",
        "1.5|2026-12-04|quantity \"1.5\" is not",
        "99999999999|2026-12-04|quantity \"99999999999\" is not",
        "20|2026-11-27|--need 2026-11-27 is past: the plan is seen from 2026-11-30T06:00:00+01:00",
        "20|soon|--need \"soon\" is not a date",
        "20|2026-13-01|--need \"2026-13-01\" is not a date",
        "20|9999-01-01|--need \"9999-01-01\" is not a date from 1990 to 2199"
      })
  void badArgumentsAreSaid(String quantity, String need, String said) {
    Ran ran = promise(LEVER, quantity, need);
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains(said).doesNotContain("Exception");
    assertThat(ran.out()).isEmpty();
  }

  @Test
  void allBadArgumentsAreSaidInOneGo() {
    Ran ran =
        Ran.pressweek(
            "promise",
            SMALL.toString(),
            " ",
            "200,abc,0",
            "--need",
            "2026-13-03",
            "--steps",
            "-1",
            "--seconds",
            "0");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .contains("--seconds 0 cannot be; expected 1 to 86400")
        .contains("--steps -1 is negative; expected 0 or more")
        .contains("quantity \"abc\" is not")
        .contains("quantity \"0\" is not")
        .contains("--need \"2026-13-03\" is not a date")
        .contains("an item is missing")
        .doesNotContain("Exception");
  }

  @Test
  void oneBadLimitIsSaidAlone() {
    Ran ran = promise(LEVER, "20", "2026-12-04", "--seconds", "90000");
    assertThat(ran.err()).contains("--seconds 90000 cannot be").doesNotContain("is negative");
  }

  @Test
  void aLineThatAScenarioMakesWrongIsSaidAndNothingPromised() throws IOException {
    Path scenario = out.resolve("more.json");
    Files.writeString(
        scenario,
        "{\"schema\": \"pressweek-scenario/1\", \"name\": \"more\", \"add\": [{\"file\":"
            + " \"orders.csv\", \"row\": {\"order\": \"9\", \"item\": \"XX\", \"quantity\": 5,"
            + " \"due\": \"2026-12-03\"}}]}");
    Ran ran = promise(LEVER, "20", "2026-12-04", "--scenario", scenario.toString());
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("more.json:1: order 9/1").contains("no promise: 1 error");
    assertThat(ran.out()).isEmpty();
  }

  @Test
  void withoutAPlanTheWeekIsPlannedFirst() {
    Ran ran =
        Ran.pressweek(
            "promise", SMALL.toString(), LEVER, "20", "--need", "2026-12-04", "--steps", "100");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(ran.err()).contains("planning the week first");
  }

  @Test
  void aMomentAfterThePlanIsRefused() {
    Ran ran =
        Ran.pressweek(
            "promise",
            SMALL.toString(),
            LEVER,
            "20",
            "--need",
            "2026-12-24",
            "--plan",
            out.resolve("plan.json").toString(),
            "--now",
            "2026-12-20T06:00");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("is outside plan 2026-W49/1; expected a time from");
  }

  @Test
  void amidTheWeekWhatRunsGoesOn() {
    now = "2026-12-01T09:30";
    Ran ran = promise(LEVER, "20", "2026-12-04");
    assertThat(ran.exitCode()).isIn(ExitCode.DONE, ExitCode.UNPLACED);
    assertThat(ran.out()).contains("seen from Tue 1 Dec 09:30");
  }
}
