package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.PlanFile;

/** {@code compare} on the small plant, by steps, so that it comes out the same everywhere. */
final class CompareCommandTest {
  private static final String SMALL = "../examples/quillback-small";
  private static final String SATURDAY = SMALL + "/scenarios/saturday.json";

  @TempDir private Path out;
  @TempDir private Path scenarios;

  private Ran compare(String... files) {
    List<String> arguments = new ArrayList<>(List.of("compare", SMALL));
    arguments.addAll(List.of(files));
    arguments.addAll(List.of("--out", out.toString(), "--steps", "30"));
    return Ran.pressweek(arguments.toArray(String[]::new));
  }

  private String scenario(String name, String changes) throws IOException {
    Path file = scenarios.resolve(name + ".json");
    String head = "{\"schema\": \"pressweek-scenario/1\", \"name\": \"" + name + "\",\n";
    return Files.writeString(file, head + changes + "}\n").toString();
  }

  /** The best plan's value and the certainty, by figure, of a scenario. */
  private Map<String, String[]> rows(String scenario) throws IOException {
    Map<String, String[]> rows = new TreeMap<>();
    for (String line : Files.readAllLines(out.resolve("compare.csv"))) {
      String[] cells = line.replaceAll("\"[^\"]*\"", "words").split(",", -1);
      if (cells[3].equals(scenario)) {
        rows.put(cells[0], new String[] {cells[4], cells[8]});
      }
    }
    return rows;
  }

  @Test
  void aShiftMoreIsSaidInASentenceAndWritten() throws IOException {
    Ran ran = compare(SATURDAY);

    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.out()).startsWith("As it stands: ").contains("A Saturday shift: ");
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(ran.err()).contains("6 of 6  A Saturday shift, seed 2001");
    assertThat(out.resolve("compare.html")).exists();
    assertThat(out.resolve("meeting.html")).exists();
    assertThat(out.resolve("compare.xlsx")).exists();
    Path plan = out.resolve("saturday/plan.json");
    assertThat(PlanFile.read(plan).plan().orElseThrow().head().inputs())
        .containsKey("scenario/saturday.json");
    assertThat(
            PlanFile.read(out.resolve("as-it-stands/plan.json"))
                .plan()
                .orElseThrow()
                .head()
                .inputs())
        .doesNotContainKey("scenario/saturday.json");
  }

  @Test
  void aScenarioThatChangesNothingIsNeverSure() throws IOException {
    String same =
        scenario(
            "same",
            "\"set\": [{\"file\": \"presses.csv\", \"where\": "
                + "{\"press\": \"V1\"}, \"set\": {\"cell\": \"vertical row\"}}]");
    Ran ran = compare(same);

    assertThat(ran.out()).doesNotContain("sure over");
    assertThat(rows("same")).hasSizeGreaterThan(30);
    assertThat(rows("same").values()).noneMatch(r -> r[1].equals("sure"));
    rows("As it stands")
        .forEach((figure, row) -> assertThat(rowsOf("same").get(figure)[0]).isEqualTo(row[0]));
  }

  private Map<String, String[]> rowsOf(String scenario) {
    try {
      return rows(scenario);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void latenessAtTwiceThePriceCostsMoreAndAtMostTwice() throws IOException {
    String dear =
        scenario(
            "dear",
            "\"scale\": [{\"file\": \"plant.json\", \"scale\": {\"rates.late_step\": 2,"
                + " \"rates.late_day\": 2}}]");
    Ran ran = compare(dear);

    double was = Double.parseDouble(rows("As it stands").get("late_cost")[0]);
    double is = Double.parseDouble(rows("dear").get("late_cost")[0]);
    assertThat(was).isPositive();
    assertThat(is).isGreaterThan(was).isLessThanOrEqualTo(2 * was);
    assertThat(rows("dear").get("cost")[1]).isEqualTo("sure");
    assertThat(ran.out()).contains("dear: Its money is by rates of its own.");
  }

  @Test
  void stepsGiveTheSameFiguresAgain() throws IOException {
    compare(SATURDAY);
    String first = Files.readString(out.resolve("compare.csv"));
    compare(SATURDAY);

    assertThat(Files.readString(out.resolve("compare.csv"))).isEqualTo(first);
  }

  @Test
  void movesAreCountedAgainstAPromisedPlan() throws IOException {
    compare(SATURDAY, "--seeds", "1");
    Path promised = out.resolve("as-it-stands/plan.json");
    compare(SATURDAY, "--seeds", "1", "--promised", promised.toString());

    assertThat(rows("As it stands").get("moved")[0]).isEqualTo("0");
    assertThat(rows("A Saturday shift")).containsKey("moved");
  }

  @Test
  void whatIsWrongIsSaidInOneGoAndNothingIsPlanned() throws IOException {
    String first =
        scenario(
            "first",
            "\"set\": [{\"file\": \"presses.csv\", \"where\": {\"press\": \"V9\"}, \"set\": {\"cell\": \"x\"}}]");
    String second =
        scenario("second", "\"drop\": [{\"file\": \"order.csv\", \"where\": {\"order\": \"1\"}}]");
    Ran ran = compare(first, second);

    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .contains(
            "first.json:2: no row of presses.csv has press \"V9\"; did you mean press \"V1\"?")
        .contains(
            "second.json:2: file \"order.csv\" is none that a scenario changes; did you mean"
                + " \"orders.csv\"?")
        .contains("nothing planned: 2 errors");
    assertThat(out).isEmptyDirectory();
  }

  @Test
  void anImpossibleValueOfAScenarioIsSaidAndNothingIsPlanned() throws IOException {
    String never =
        scenario(
            "never",
            "\"set\": [{\"file\": \"orders.csv\", \"where\": {\"order\": \"703\"},"
                + " \"set\": {\"quantity\": -5, \"due\": \"2020-01-01\"}}]");
    Ran ran = compare(never);
    Ran plan = Ran.pressweek("plan", SMALL, "--scenario", never, "--out", out.toString());

    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("never.json:2: quantity").contains("nothing planned: 1 error");
    assertThat(plan.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(plan.err()).contains("never.json:2: quantity");
    assertThat(out).isEmptyDirectory();
  }

  @Test
  void aPromiseThatAScenarioMakesImpossibleIsSaidWithItsCure() throws IOException {
    String more =
        "\"scale\": [{\"file\": \"orders.csv\", \"where\": {\"order\": \"708\"},"
            + " \"scale\": {\"quantity\": 20}}]";
    String cure =
        "\"drop\": [{\"file\": \"promised.csv\", \"where\": {\"order\": \"708\", \"line\": \"1\"}}]";
    Ran ran = compare(scenario("more", more), SATURDAY);

    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains("more: no plan that keeps every hard rule was found: line 708/1 is promised")
        .contains("cannot be kept; to plan without, add to the scenario: " + cure)
        .contains("A Saturday shift: ");
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(compare(scenario("cured", more + ", " + cure)).out())
        .doesNotContain("no plan that keeps every hard rule");
  }

  @Test
  void otherCommandsTakeAScenarioToo() {
    Ran plan =
        Ran.pressweek(
            "plan", SMALL, "--scenario", SATURDAY, "--out", out.toString(), "--steps", "30");
    String file = out.resolve("plan.json").toString();

    assertThat(plan.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(Ran.pressweek("audit", SMALL, file).err()).contains("scenario/saturday.json");
    assertThat(Ran.pressweek("audit", SMALL, file, "--scenario", SATURDAY).exitCode())
        .isEqualTo(ExitCode.DONE);
    assertThat(Ran.pressweek("check", SMALL, "--scenario", "none.json").exitCode())
        .isEqualTo(ExitCode.BAD_INPUT);
  }

  @Test
  void badArgumentsAreSaid() {
    assertThat(compare().exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(compare("none.json").err()).contains("none.json is not a file");
    assertThat(compare(SATURDAY, "--seeds", "0").err()).contains("--seeds must be 1 to 50");
  }
}
