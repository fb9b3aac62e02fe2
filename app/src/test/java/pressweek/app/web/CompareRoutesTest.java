package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.compare.Comparison;
import pressweek.app.desk.Comparing;
import pressweek.app.desk.Desk;
import pressweek.app.desk.FolderLook;
import pressweek.app.desk.ScenarioShelf;
import pressweek.app.desk.Turn;
import pressweek.app.store.StoreTrouble;

/** Comparisons in the background: begun, watched, stopped, kept, and refused in words. */
class CompareRoutesTest {
  private static final String SATURDAY = "\"file:saturday.json\"";

  @TempDir private Path folder;

  private Opened opened;

  @BeforeEach
  void open() throws IOException, StoreTrouble {
    opened = Opened.local(folder);
    Path scenarios = Files.createDirectories(opened.plant.resolve("scenarios"));
    Files.copy(
        Path.of("../examples/quillback-small/scenarios/saturday.json"),
        scenarios.resolve("saturday.json"));
  }

  @AfterEach
  void close() {
    opened.close();
  }

  private HttpResponse<String> compare(String scenarios, int seeds, int seconds)
      throws IOException {
    return opened.post(
        "/api/compared",
        "{\"scenarios\":[%s],\"seeds\":%d,\"seconds\":%d}".formatted(scenarios, seeds, seconds));
  }

  private String words(HttpResponse<String> answer) throws IOException {
    return Opened.JSON.readTree(answer.body()).path("words").asText();
  }

  private JsonNode going() throws IOException {
    return opened.get("/api/compared/going");
  }

  private void awaitEnd() throws IOException, InterruptedException {
    while (going().path("on").asBoolean()) {
      Thread.sleep(50);
    }
  }

  private String refused(String scenarios, int seeds, int seconds) throws IOException {
    HttpResponse<String> answer = compare(scenarios, seeds, seconds);
    assertThat(answer.statusCode()).as(answer.body()).isIn(400, 409, 422);
    assertThat(going().path("on").asBoolean()).isFalse();
    return words(answer);
  }

  @Test
  void aComparisonSaysASentenceAScenarioAndStaysWhenThePagesAreOpenedAnew()
      throws IOException, InterruptedException, StoreTrouble {
    assertThat(opened.get("/api/compared").path("there").asBoolean()).isFalse();
    assertThat(opened.ask("/compared/compare.html").statusCode()).isEqualTo(404);
    assertThat(compare(SATURDAY, 1, 1).statusCode()).isEqualTo(200);
    assertThat(going().path("by").asText()).isEqualTo("tester");
    assertThat(going().path("of").asInt()).isEqualTo(2);
    awaitEnd();
    JsonNode last = opened.get("/api/compared");
    JsonNode about = last.path("about");
    assertThat(about.path("base").asText()).startsWith("As it stands: ");
    assertThat(about.path("sentences").get(0).path("sentence").asText())
        .startsWith("A Saturday shift: ")
        .contains("with 1 seed nobody can say whether that is chance");
    assertThat(about.path("table").path("sides").get(1).asText()).isEqualTo("A Saturday shift");
    assertThat(about.path("table").path("groups").get(0).path("name").asText())
        .isEqualTo("Delivery");
    assertThat(last.path("since")).isEmpty();
    assertThat(last.path("kept").asBoolean()).isTrue();
    assertThat(opened.store.history().latest(1).get(0).what())
        .isEqualTo("began to compare A Saturday shift");
    papers();
    Desk anew =
        new Desk(
            opened.store,
            new FolderLook(opened.plant, opened.desk.nowMin()),
            Clock.fixed(Opened.NOW, ZoneOffset.UTC));
    Comparison kept = new Comparing(anew, new Turn(), new ScenarioShelf(anew)).last().orElseThrow();
    assertThat(kept.about()).isEqualTo(about);
    assertThat(kept.papers()).containsKeys("compare.xlsx", "as-it-stands/index.html");
  }

  private void papers() throws IOException {
    for (String name :
        List.of("compare.html", "meeting.html", "as-it-stands/index.html", "saturday/index.html")) {
      HttpResponse<String> page = opened.ask("/compared/" + name);
      assertThat(page.statusCode()).as(name).isEqualTo(200);
      assertThat(page.headers().allValues("Content-Security-Policy"))
          .as(name)
          .singleElement()
          .asString()
          .contains("default-src 'none'", "'sha256-")
          .doesNotContain("unsafe");
    }
    assertThat(opened.ask("/compared/meeting.html").body()).contains("A Saturday shift: ");
    assertThat(opened.ask("/compared/compare.xlsx").headers().firstValue("Content-Disposition"))
        .contains("attachment; filename=\"compare.xlsx\"");
    assertThat(opened.ask("/compared/about.json").statusCode()).isEqualTo(404);
  }

  @Test
  void whatIsNotAsItWasSinceIsSaid() throws IOException, InterruptedException {
    compare(SATURDAY, 1, 1);
    awaitEnd();
    Path orders = opened.plant.resolve("orders.csv");
    Files.writeString(orders, Files.readString(orders) + "\n");
    Path saturday = opened.plant.resolve("scenarios/saturday.json");
    Files.writeString(saturday, Files.readString(saturday).replace("12:00", "13:00"));
    assertThat(opened.get("/api/compared").path("since"))
        .extracting(JsonNode::asText)
        .containsExactly("orders.csv changed", "scenario \"A Saturday shift\" changed");
    assertThat(refused(SATURDAY, 1, 1))
        .isEqualTo(
            "orders.csv changed since the week on the wall was made; take the files there first");
    Files.delete(saturday);
    assertThat(opened.get("/api/compared").path("since").get(1).asText())
        .isEqualTo("scenario \"A Saturday shift\" is gone");
  }

  @Test
  void aComparisonAndASearchOfTheWeekAreNeverDoneAtOnce()
      throws IOException, InterruptedException, StoreTrouble {
    long version = opened.desk.standing().orElseThrow().version();
    String solve = "{\"version\":" + version + ",\"seconds\":300}";
    assertThat(compare(SATURDAY, 3, 600).statusCode()).isEqualTo(200);
    HttpResponse<String> second = opened.post("/api/week/solve", solve);
    assertThat(second.statusCode()).isEqualTo(409);
    assertThat(words(second))
        .isEqualTo(
            "tester is comparing scenarios already; stop that on the page Scenarios, or wait");
    assertThat(compare(SATURDAY, 1, 1).statusCode()).isEqualTo(409);
    assertThat(opened.get("/api/week").path("solving").path("on").asBoolean()).isFalse();
    // the search of the week is another: its stop is not this one's
    opened.post("/api/week/solve/stop", "{}");
    assertThat(going().path("on").asBoolean()).isTrue();
    assertThat(going().path("trouble").asText()).isEmpty();
    opened.post("/api/compared/stop", "{}");
    awaitEnd();
    assertThat(going().path("trouble").asText())
        .isEqualTo("The comparison was stopped before there was anything to compare.");
    assertThat(opened.get("/api/compared").path("there").asBoolean()).isFalse();

    assertThat(opened.post("/api/week/solve", solve).statusCode()).isEqualTo(200);
    assertThat(words(compare(SATURDAY, 1, 1)))
        .isEqualTo("tester is solving the week already; stop that on the week wall, or wait");
    assertThat(going().path("busy").asText()).startsWith("tester is solving the week");
    opened.post("/api/week/solve/stop", "{}");
  }

  @Test
  void badWishesAreRefusedInWords() throws IOException {
    assertThat(refused("", 3, 1))
        .contains("\"scenarios\" is a list of 0; expected a list of 1 to 5");
    assertThat(
            refused(
                String.join(",", List.of("\"a\"", "\"b\"", "\"c\"", "\"d\"", "\"e\"", "\"f\"")),
                3,
                1))
        .contains("\"scenarios\" is a list of 6");
    assertThat(refused("7", 3, 1)).contains("expected a list of 1 to 5 texts");
    assertThat(refused("\"file:../orders.csv\"", 3, 1)).startsWith("there is no scenario");
    assertThat(refused("\"kept:none\"", 3, 1)).startsWith("there is no scenario \"kept:none\"");
    assertThat(refused(SATURDAY, 0, 1)).contains("\"seeds\" is another thing");
    assertThat(refused(SATURDAY, 21, 1)).contains("expected a whole number from 1 to 20");
    assertThat(refused(SATURDAY, 3, 0)).contains("\"seconds\" is another thing");
    assertThat(refused(SATURDAY, 20, 600))
        .isEqualTo("40 plans of 600 s take 400 min; expected at most 240 min");
    Files.writeString(opened.plant.resolve("scenarios/wrong.json"), "{\n\"schema\": 1}");
    assertThat(refused("\"file:wrong.json\"", 3, 1))
        .contains("wrong.json:2: schema is \"\"; expected \"pressweek-scenario/1\"");
  }

  @Test
  void aBrokenFileOfTheLastComparisonIsAsIfThereWereNone()
      throws IOException, InterruptedException, StoreTrouble {
    compare(SATURDAY, 1, 1);
    awaitEnd();
    Path kept;
    try (var files = Files.list(folder)) {
      kept =
          files
              .filter(f -> f.toString().endsWith(".comparison"))
              .max(Comparator.naturalOrder())
              .orElseThrow();
    }
    Files.writeString(kept, "no archive");
    Comparing anew = new Comparing(opened.desk, new Turn(), new ScenarioShelf(opened.desk));
    assertThat(anew.last()).isEmpty();
    assertThat(anew.isKept()).isFalse();
    assertThat(anew.since()).isEmpty();
  }
}
