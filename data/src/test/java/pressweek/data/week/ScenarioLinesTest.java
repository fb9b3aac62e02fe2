package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pressweek.data.files.FolderReader;
import pressweek.data.files.InputError;
import pressweek.data.files.Scenario;

/** Values of order lines that a scenario makes, and that cannot be right. */
final class ScenarioLinesTest {
  /** Monday 30 November 2026, 06:00 UTC. */
  private static final int NOW = 29_933_640;

  @TempDir private Path folder;

  @BeforeEach
  void plant() throws IOException {
    write("orders.csv", "order,item,quantity,due", "1,M1,100,2026-12-02", "2,M8,100,2026-12-02");
    write("presses.csv", "press,orientation,clamp_kn", "P1,horizontal,900");
    write("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "M1,M1,4,30,");
    write("resins.csv", "resin", "PP");
  }

  private void write(String name, String... lines) throws IOException {
    Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
  }

  private WeekResult week(Scenario scenario) throws IOException {
    return Week.build(FolderReader.read(folder, scenario), NOW);
  }

  /** A scenario whose third line makes the change. */
  private static Scenario scenario(String change) {
    return Scenario.of(
        "more.json",
        "{\"schema\": \"pressweek-scenario/1\",\n\"name\": \"more\",\n" + change + "}");
  }

  private static List<String> errors(WeekResult week) {
    return week.errors().stream().map(InputError::toString).toList();
  }

  @Test
  void whatTheFolderHasWrongLeavesItsLineUnplaced() throws IOException {
    WeekResult week = week(Scenario.none());
    assertThat(week.errors()).isEmpty();
    assertThat(week.problem().orElseThrow().unplaced()).hasSize(1);
    WeekResult other =
        week(scenario("\"set\": [{\"file\": \"orders.csv\", \"set\": {\"quantity\": 50}}]"));
    assertThat(other.errors()).isEmpty();
    assertThat(other.problem().orElseThrow().unplaced()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'item': 'M9'|order 3/1: no mold makes item M9",
        "'item': 'M1', 'mold': 'M7'|order 3/1: mold \"M7\" is not in molds.csv",
        "'item': 'M1', 'resin': 'PX'|order 3/1: resin \"PX\" is not in resins.csv",
        "'item': 'M1', 'needs': 'foood'|needs \"foood\" is not known; expected one of food, rohs",
        "'words': 'a knob'|order 3/1: the item is said in words, and there is no guide.json",
        "'customer_part': 'C1'|order 3/1: customer part \"C1\" is not in customer_parts.csv"
      })
  void aLineThatAScenarioAddsNamesItsLineThere(String cells, String said) throws IOException {
    WeekResult week =
        week(
            scenario(
                "\"add\": [{\"file\": \"orders.csv\", \"row\": {\"order\": \"3\", \"quantity\": 5,"
                    + " \"due\": \"2026-12-02\", "
                    + cells.replace('\'', '"')
                    + "}}]"));
    assertThat(errors(week)).singleElement().asString().startsWith("more.json:3: ").contains(said);
    assertThat(week.problem()).isEmpty();
  }

  @Test
  void anItemThatAScenarioSetsNamesItsCell() throws IOException {
    WeekResult week =
        week(
            scenario(
                "\"set\": [{\"file\": \"orders.csv\", \"where\": {\"order\": \"1\"},\n"
                    + "\"set\": {\"item\": \"M9\"}}]"));
    assertThat(errors(week))
        .singleElement()
        .asString()
        .startsWith("more.json:4: order 1/1: no mold");
    assertThat(week.problem()).isEmpty();
  }

  @Test
  void aNeedThatNobodyKnowsIsAWarningWithTheNearest() throws IOException {
    write(
        "orders.csv",
        "order,item,quantity,due,needs",
        "1,M1,100,2026-12-02,Food",
        "2,M1,100,2026-12-02,rohs|roohs");
    WeekResult week = week(Scenario.none());
    assertThat(week.errors()).isEmpty();
    assertThat(week.warnings())
        .extracting(InputError::toString)
        .containsOnlyOnce(
            "orders.csv:3: needs \"roohs\" is not known; expected one of food, rohs; did you mean"
                + " rohs?");
    assertThat(week.warnings()).extracting(InputError::message).noneMatch(m -> m.contains("Food"));
  }
}
