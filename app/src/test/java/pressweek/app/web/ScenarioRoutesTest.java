package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.Scenario;

/** Scenarios of the folder and of the store: listed, checked, kept, never overwritten. */
class ScenarioRoutesTest {
  private static final String MORE =
      """
      {
        "schema": "pressweek-scenario/1",
        "name": "More of everything",
        "words": "A tenth more.",
        "scale": [
          {"file": "orders.csv", "scale": {"quantity": 1.1}}
        ]
      }
      """;

  @TempDir private Path folder;

  private Opened opened;

  @BeforeEach
  void open() throws IOException, StoreTrouble {
    opened = Opened.local(folder);
  }

  @AfterEach
  void close() {
    opened.close();
  }

  private void file(String name, String text) throws IOException {
    Path scenarios = Files.createDirectories(opened.plant.resolve("scenarios"));
    Files.writeString(scenarios.resolve(name), text);
  }

  private HttpResponse<String> keep(String name, long version, String text) throws IOException {
    ObjectNode body = Opened.JSON.createObjectNode().put("name", name).put("version", version);
    return opened.post(
        "/api/scenarios/keep", body.put("text", text).put("why", "asked").toString());
  }

  private static JsonNode json(HttpResponse<String> answer) throws IOException {
    return Opened.JSON.readTree(answer.body());
  }

  private JsonNode all() throws IOException {
    return opened.get("/api/scenarios").path("scenarios");
  }

  @Test
  void filesOfTheFolderAreListedWithTheirFaultsByLine() throws IOException {
    assertThat(all()).isEmpty();
    file("more.json", MORE);
    file("README.md", "no scenario");
    file("wrong.json", MORE.replace("orders.csv", "oders.csv"));
    file("broken.json", "{\n\"name\": ");
    JsonNode rows = all();
    assertThat(rows.findValuesAsText("id"))
        .containsExactly("file:broken.json", "file:more.json", "file:wrong.json");
    assertThat(rows.get(1).path("name").asText()).isEqualTo("More of everything");
    assertThat(rows.get(1).path("sound").asBoolean()).isTrue();
    assertThat(rows.get(0).path("sound").asBoolean()).isFalse();
    JsonNode fault = rows.get(2).path("findings").get(0);
    assertThat(fault.path("file").asText() + ":" + fault.path("line").asInt())
        .isEqualTo("wrong.json:6");
    assertThat(fault.path("message").asText()).contains("did you mean \"orders.csv\"?");
    assertThat(fault.path("text").asText()).contains("oders.csv");
  }

  @Test
  void aRowThatTheFolderDoesNotHaveIsAFaultOfTheScenario() throws IOException {
    String text =
        MORE.replace("\"scale\": {\"q", "\"where\": {\"order\": \"none\"}, \"scale\": {\"q");
    ObjectNode body = Opened.JSON.createObjectNode().put("text", text);
    JsonNode found = json(opened.post("/api/scenarios/check", body.toString()));
    assertThat(found.path("sound").asBoolean()).isFalse();
    assertThat(found.path("findings").get(0).path("line").asInt()).isEqualTo(6);
    assertThat(found.path("findings").get(0).path("message").asText())
        .contains("no row of orders.csv has order \"none\"");
  }

  @Test
  void aTextIsKeptUnderTheNameThatItSays() throws IOException, StoreTrouble {
    assertThat(keep("", 0, MORE).statusCode()).isEqualTo(200);
    JsonNode row = all().get(0);
    assertThat(row.path("id").asText()).isEqualTo("kept:More of everything");
    assertThat(row.path("kept").path("version").asInt()).isEqualTo(1);
    assertThat(row.path("kept").path("by").asText()).isEqualTo("tester");
    assertThat(
            opened.get("/api/scenarios/text?id=kept:More%20of%20everything").path("text").asText())
        .isEqualTo(MORE);
    assertThat(opened.store.history().latest(1))
        .singleElement()
        .satisfies(
            e -> {
              assertThat(e.what()).isEqualTo("wrote scenario More of everything");
              assertThat(e.change().why()).isEqualTo("asked");
            });
    // another name is another scenario
    assertThat(keep("More of everything", 1, MORE.replace("More of", "Less of")).statusCode())
        .isEqualTo(200);
    assertThat(all().findValuesAsText("name"))
        .containsExactly("Less of everything", "More of everything");
  }

  @Test
  void nobodyOverwritesAnother() throws IOException, StoreTrouble {
    keep("", 0, MORE);
    opened
        .store
        .scenarios()
        .put(new Scenario("More of everything", 1, MORE + "\n", Change.of("Bea", Opened.NOW)));
    HttpResponse<String> second = keep("More of everything", 1, MORE.replace("1.1", "1.3"));
    assertThat(second.statusCode()).isEqualTo(409);
    assertThat(json(second).path("words").asText())
        .startsWith("Nothing was changed: Bea has written \"More of everything\" meanwhile");
    assertThat(keep("", 0, MORE).statusCode()).isEqualTo(409);
    ObjectNode drop = Opened.JSON.createObjectNode().put("name", "More of everything");
    assertThat(opened.post("/api/scenarios/drop", drop.put("version", 1).toString()).statusCode())
        .isEqualTo(409);
    assertThat(opened.store.scenarios().find("More of everything").orElseThrow().text())
        .isEqualTo(MORE + "\n");
    assertThat(opened.post("/api/scenarios/drop", drop.put("version", 2).toString()).statusCode())
        .isEqualTo(200);
    assertThat(all()).isEmpty();
    assertThat(json(opened.post("/api/scenarios/drop", drop.toString())).path("words").asText())
        .contains("is gone by now");
  }

  @Test
  void whatHasFaultsIsNotKept() throws IOException {
    for (String text :
        new String[] {
          "",
          "no JSON",
          "[]",
          "{}",
          MORE.replace("orders.csv", "guide.json"),
          MORE.replace("More of everything", " "),
          MORE.replace("More of everything", "a".repeat(81)),
          MORE.replace("More of everything", "a\\u0000b"),
          MORE.replace("1.1", "0")
        }) {
      HttpResponse<String> answer = keep("", 0, text);
      assertThat(answer.statusCode()).as(text).isEqualTo(422);
      assertThat(json(answer).path("findings")).as(text).isNotEmpty();
    }
    assertThat(keep("", 0, " ".repeat(100_001)).statusCode()).isEqualTo(400);
    assertThat(all()).isEmpty();
  }
}
