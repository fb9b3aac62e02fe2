package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ScenarioFaultsTest extends ScenarioTries {
  @Test
  void everythingWrongIsSaidInOneGo() {
    assertThat(
            findings(
                """
                "sets": [],
                "set": [
                  {"file": "press.csv", "where": {"press": "P1"}, "set": {"food": "only"}},
                  {"file": "presses.csv", "where": {"press": "P1"}, "set": {"fod": "only"}},
                  {"file": "presses.csv", "where": {"press": "P2"}, "set": {"food": "only"}},
                  {"file": "presses.csv", "where": {"press": "P1"}},
                  {"file": "plant.json", "set": {"rates.late_dy": 3}},
                  {"file": "plant.json", "in": "shifts", "where": {"name": "erly"},
                   "set": {"setters": 2}},
                  {"file": "plant.json", "in": "shifts", "where": {"name": "early"},
                   "set": {"seters": 2}}
                ],
                "drop": [{"file": "orders.csv"}],
                "scale": [{"file": "orders.csv", "scale": {"due": 2}},
                          {"file": "orders.csv", "scale": {"quantity": "much"}},
                          {"file": "orders.csv", "scale": {"weight": 2}}]
                """))
        .containsExactly(
            "try.json:4: key \"sets\" is not known; did you mean \"set\"?",
            "try.json:6: file \"press.csv\" is none that a scenario changes; did you mean"
                + " \"presses.csv\"?",
            "try.json:7: presses.csv has no column \"fod\"; did you mean food?",
            "try.json:8: no row of presses.csv has press \"P2\"; did you mean press \"P1\"?",
            "try.json:9: a change to set has no \"set\"; expected an object such as {\"column\":"
                + " \"value\"}",
            "try.json:10: rates of plant.json has no key \"late_dy\"; did you mean \"late_day\"?",
            "try.json:11: no entry of shifts in plant.json has name \"erly\"; did you mean"
                + " \"early\"?",
            "try.json:14: a shift has no key \"seters\"; did you mean \"setters\"?",
            "try.json:16: a drop has no \"where\"; expected the rows that are left out",
            "try.json:17: due holds no numbers; expected a column such as quantity to scale",
            "try.json:18: the factor is the text \"much\"; expected a number from 0.001 to 1,000",
            "try.json:19: orders.csv has no figure there to scale; expected some weight");
  }

  @Test
  void aFaultInWhatTheScenarioMakesNamesItsLine() {
    folder.with("plant.json", "{\n\n\n\"efficiency_pct\": 200\n}");
    assertThat(
            findings(
                """
                "set": [
                  {"file": "presses.csv", "where": {"press": "P1"}, "set": {"clamp_kn": "strong"}},
                  {"file": "plant.json", "set": {
                     "horizon_days": 0}}
                ],
                "add": [{"file": "orders.csv", "row": {"order": "4711", "line": 1, "item": "KNOB",
                         "quantity": 5, "due": "2026-12-01"}},
                        {"file": "orders.csv",
                         "row": {"order": "4713", "item": "KNOB", "quantity": "few",
                                 "due": "2026-12-01"}}]
                """))
        .containsExactlyInAnyOrder(
            "plant.json:4: efficiency_pct is the number 200; expected a number from 1 to 100",
            "try.json:7: horizon_days is the number 0; expected a whole number from 1 to 366",
            "try.json:5: clamp_kn \"strong\" is not a number; expected digits, with a point for"
                + " decimals",
            "try.json:9: order line \"4711/1\" is also in orders.csv:2; expected it once",
            "try.json:12: quantity \"few\" is not a number; expected digits");
  }

  @Test
  void aFaultOfTheScenarioInAnOrderLineIsAnError() {
    folder.with("orders.csv", ORDERS + "4713,1,KNOB,ten,2026-12-03\n");
    Folder read =
        with(
            """
            "set": [{"file": "orders.csv", "where": {"order": "4711"}, "set": {"quantity": -5}}]
            """);
    assertThat(read.errors()).isNotEmpty().allMatch(e -> e.file().equals("try.json"));
    assertThat(read.findings())
        .filteredOn(f -> f.severity() == InputError.Severity.ORDER_LINE)
        .extracting(InputError::file)
        .containsExactly("orders.csv");
  }

  @Test
  void aFaultThatWasThereBeforeKeepsItsPlace() {
    folder.with("orders.csv", ORDERS + "4713,1,KNOB,ten,2026-12-03\n");
    assertThat(
            findings(
                """
                "scale": [{"file": "orders.csv", "scale": {"quantity": 2}}],
                "set": [{"file": "orders.csv", "where": {"order": "4713"}, "set": {"weight": 2}}]
                """))
        .containsExactly("orders.csv:5: quantity \"ten\" is not a number; expected digits");
  }

  @Test
  void anotherUnitThanTheTableHasIsAskedBack() {
    folder.with("presses.csv", "press,orientation,clamp_ton_us\nP1,vertical,55\n");
    String kn = "\"set\": [{\"file\": \"presses.csv\", \"set\": {\"clamp_kn\": 900}}]";
    String tons = "\"set\": [{\"file\": \"presses.csv\", \"set\": {\"clamp_ton_us\": 100}}]";

    assertThat(findings(kn))
        .containsExactly(
            "try.json:4: \"clamp_kn\" is in another unit than clamp_ton_us of presses.csv; expected"
                + " clamp_ton_us");
    assertThat(findings(tons)).isEmpty();
  }

  @Test
  void aFileThatIsNoScenarioSaysWhatItShouldBe() throws IOException {
    Path file = Files.writeString(path.resolve("x.json"), "{\"name\": 3}", StandardCharsets.UTF_8);

    assertThat(Scenario.read(file).findings())
        .extracting(InputError::toString)
        .containsExactly(
            "x.json:1: schema is \"\"; expected \"pressweek-scenario/1\"",
            "x.json:1: the scenario has no name; expected \"name\": \"...\"");
    assertThat(Scenario.of("x.json", "[]").findings())
        .extracting(InputError::toString)
        .containsExactly("x.json:1: the file is a list; expected an object");
    assertThat(
            Scenario.of("x.json", "{\"schema\": \"pressweek-scenario/1\", \"name\": \"n\"}")
                .findings())
        .extracting(InputError::toString)
        .containsExactly("x.json: the scenario changes nothing; expected set, add, drop or scale");
  }
}
