package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.FoodUse;

class ScenarioTest extends ScenarioTries {
  @Test
  void setChangesTheRowThatItsKeyNames() {
    Folder read =
        with(
            """
            "set": [{"file": "orders.csv", "where": {"order": "4711", "line": 2},
                     "set": {"due": "2026-12-04", "weight": 2.5}}]
            """);

    assertThat(read.findings()).isEmpty();
    assertThat(read.demand().orders())
        .extracting(OrderRow::id)
        .containsExactly("4711/1", "4711/2", "4712/1");
    OrderRow changed = read.demand().orders().get(1);
    assertThat(changed.due()).isEqualTo(new When.Day(java.time.LocalDate.of(2026, 12, 4)));
    assertThat(changed.weightHundredths()).isEqualTo(250);
    assertThat(changed.at()).isEqualTo(new At("try.json", 4));
    assertThat(read.demand().orders().get(0).at()).isEqualTo(new At("orders.csv", 2));
  }

  @Test
  void anEmptyLineCellIsTheFirstLine() {
    Folder read =
        with("\"drop\": [{\"file\": \"orders.csv\", \"where\": {\"order\": 4712, \"line\": 1}}]");

    assertThat(read.findings()).isEmpty();
    assertThat(read.demand().orders()).extracting(OrderRow::id).containsExactly("4711/1", "4711/2");
  }

  @Test
  void scaleMultipliesAndRoundsHalfAPieceUp() {
    Folder read =
        with(
            """
            "scale": [{"file": "orders.csv", "scale": {"quantity": 1.5}},
                      {"file": "orders.csv", "where": {"item": "KN*"}, "scale": {"quantity": 2}}]
            """);

    assertThat(read.findings()).isEmpty();
    assertThat(read.demand().orders()).extracting(OrderRow::quantity).containsExactly(300, 11, 750);
    assertThat(read.demand().orders().get(0).at()).isEqualTo(new At("orders.csv", 2));
  }

  @Test
  void addMakesRowsAlsoOfATableThatIsNotThere() {
    Folder read =
        with(
            """
            "add": [
              {"file": "stock.csv", "row": {"item": "KNOB", "on_hand": 40}},
              {"file": "molds.csv", "row": {"mold": "M1-2", "makes": ["KNOB", "LEVER"],
                                            "live_cavities": 2, "runs_on": "P1", "cycle_s": 40,
                                            "hand_load": true}}
            ]
            """);

    assertThat(read.findings()).isEmpty();
    assertThat(read.has(InputFile.STOCK)).isTrue();
    assertThat(read.demand().stock()).extracting(StockRow::item).containsExactly("KNOB");
    MoldRow second = read.floor().molds().get(1);
    assertThat(second.use().makes()).containsExactly("KNOB", "LEVER");
    assertThat(second.handLoad()).isTrue();
    assertThat(read.floor().molds().get(0).handLoad()).isFalse();
    assertThat(second.at()).isEqualTo(new At("try.json", 6));
  }

  @Test
  void dropLeavesRowsOut() {
    Folder read =
        with(
            """
            "drop": [{"file": "orders.csv", "where": {"item": ["LEVER", "HANDLE"]}}]
            """);

    assertThat(read.findings()).isEmpty();
    assertThat(read.demand().orders()).extracting(OrderRow::id).containsExactly("4711/1", "4712/1");
  }

  @Test
  void rowsAreNamedByWhatTheFolderHolds() {
    Folder read =
        with(
            """
            "set": [
              {"file": "orders.csv", "where": {"item": "KNOB"}, "set": {"item": "LEVER"}},
              {"file": "orders.csv", "where": {"item": "LEVER"}, "set": {"item": "KNOB"}}
            ]
            """);

    assertThat(read.demand().orders())
        .extracting(OrderRow::item)
        .containsExactly("LEVER", "KNOB", "LEVER");
  }

  @Test
  void plantFiguresAreSetByPathAndScaledFromTheirDefaults() {
    folder.with("plant.json", "{\"name\": \"Test\",\n \"rates\": {\"late_day\": 80}}");
    Folder read =
        with(
            """
            "set": [{"file": "plant.json", "set": {"promised.move_tolerance_min": 90}}],
            "scale": [{"file": "plant.json", "scale": {"rates.late_day": 2, "rates.change_h": 2}}]
            """);

    assertThat(read.findings()).isEmpty();
    assertThat(read.plant().moveToleranceMin()).isEqualTo(90);
    assertThat(read.plant().rates().lateDay()).isEqualTo(160L * 100_000);
    assertThat(read.plant().rates().changeHour()).isEqualTo(90L * 100_000);
    assertThat(read.plant().given()).containsKey("rates.change_h");
  }

  @Test
  void shiftsAreAddedChangedAndDropped() {
    String shift = "\"days\": [\"SAT\"], \"from\": \"06:00\", \"to\": \"12:00\"";
    Folder read =
        with(
            """
            "add": [{"file": "plant.json", "in": "shifts", "row": {"name": "saturday", %s}},
                    {"file": "plant.json", "in": "calendars.two-shift", "row": "saturday"}],
            "set": [{"file": "plant.json", "in": "shifts", "where": {"name": "early"},
                     "set": {"from": "05:00"}}],
            "drop": [{"file": "plant.json", "in": "shifts", "where": {"name": "late"}},
                     {"file": "plant.json", "in": "calendars.two-shift", "where": "late"}]
            """
                .formatted(shift));

    assertThat(read.findings()).isEmpty();
    assertThat(read.plant().hours().shifts())
        .extracting("name")
        .containsExactly("early", "saturday");
    assertThat(read.plant().hours().shifts().get(0).from()).hasToString("05:00");
  }

  @Test
  void theScenarioIsAnInputOfThePlan() {
    Scenario none = Scenario.none();
    Folder read = with("\"drop\": [{\"file\": \"orders.csv\", \"where\": {\"order\": \"4712\"}}]");

    assertThat(none.given()).isFalse();
    assertThat(read.inputs()).containsKey("scenario/try.json");
    assertThat(read.inputs().get("scenario/try.json")).hasSize(64);
    assertThat(folder.read().inputs()).doesNotContainKey("scenario/try.json");
    assertThat(read.inputs().get("orders.csv")).isEqualTo(folder.read().inputs().get("orders.csv"));
  }

  @Test
  void thePlantsOwnHeadingsAndDecimalCommasCount() {
    folder
        .with("headings.json", "{\"orders.csv\": {\"Menge\": \"quantity\"}}")
        .with("orders.csv", "order;item;Menge;due;weight\n4711;KNOB;1200;2026-12-01;1,5\n");
    Folder read =
        with(
            """
            "scale": [{"file": "orders.csv", "scale": {"Menge": 1.001, "weight": 1.5}}]
            """);

    assertThat(read.findings()).isEmpty();
    assertThat(read.demand().orders().get(0).quantity()).isEqualTo(1201);
    assertThat(read.demand().orders().get(0).weightHundredths()).isEqualTo(225);
  }

  @Test
  void aColumnThatTheTableDoesNotHaveIsMade() {
    Folder read =
        with(
            "\"set\": [{\"file\": \"presses.csv\", \"where\": {\"press\": \"P1\"}, \"set\": "
                + "{\"food\": \"only\"}}]");

    assertThat(read.findings()).isEmpty();
    assertThat(read.floor().presses().get(0).food()).isEqualTo(FoodUse.ONLY);
  }

  @Test
  void theSchemaNamesTheKeysThatAreRead() throws IOException {
    JsonTree.Obj schema =
        JsonReader.read("schema", Files.newBufferedReader(Path.of("../docs/scenario.schema.json")))
            .object()
            .orElseThrow();
    JsonTree.Obj properties = (JsonTree.Obj) schema.field("properties").orElseThrow();

    assertThat(properties.fields().keySet())
        .containsExactlyInAnyOrderElementsOf(ScenarioReader.KEYS);
  }
}
