package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder with errors has no plan; the pages say so. */
class WithoutPlanTest {
  @TempDir private static Path dir;
  private static OpenPages pages;

  @BeforeAll
  static void open() throws Exception {
    pages = new OpenPages(dir, false);
  }

  @AfterAll
  static void close() {
    pages.close();
  }

  @Test
  void everythingAnswersWithoutAPlan() throws Exception {
    JsonNode pulls = pages.get("/api/pulls").json();
    assertThat(pulls.path("rows").isArray()).isTrue();
    assertThat(pulls.path("plan").path("number").asText()).isEmpty();
    assertThat(pages.get("/api/lists").text()).isEqualTo("[]");
    assertThat(pages.get("/api/papers").text()).isEqualTo("[]");
    OpenPages.Answer changes = pages.get("/api/lists/changes");
    assertThat(changes.status()).isEqualTo(404);
    assertThat(changes.words()).isEqualTo(Floor.NO_PLAN);
    JsonNode figures = pages.get("/api/figures").json();
    assertThat(figures.path("sentence").asText()).isEqualTo(Floor.NO_PLAN);
    assertThat(figures.path("rows").isArray()).isTrue();
    assertThat(figures.path("plans")).isEmpty();
    OpenPages.Answer scan = pages.post("/api/scan", "{\"text\":\"R001\"}");
    assertThat(scan.words()).isEqualTo(Floor.NO_PLAN);
  }

  @Test
  void errorsComeWithTheirLines() throws Exception {
    JsonNode files = pages.get("/api/files").json();
    assertThat(files.path("plannable").asBoolean()).isFalse();
    assertThat(files.path("planned").asBoolean()).isFalse();
    assertThat(files.path("findings").findValuesAsText("severity")).contains("ERROR");
    assertThat(files.path("findings").findValuesAsText("file")).contains("presses.csv");
  }

  @Test
  void pagesAreServedToAnybodyAndHoldNothing() throws Exception {
    String[] names = {
      "/",
      "/pulls",
      "/changes",
      "/crew",
      "/codes",
      "/figures",
      "/files",
      "/history",
      "/users",
      "/login"
    };
    for (String name : names) {
      OpenPages.Answer page = pages.get(name);
      assertThat(page.status()).as(name).isEqualTo(200);
      assertThat(page.type()).as(name).startsWith("text/html");
      assertThat(page.text())
          .as(name)
          .contains("<script type=\"module\"")
          .doesNotContain("Quillback");
    }
    assertThat(pages.get("/assets/..%2fpages%2fwall.html").status()).isIn(400, 404);
    assertThat(pages.get("/assets/nothing.js").status()).isEqualTo(404);
    assertThat(pages.get("/api/me").json().path("may").toString())
        .contains("\"changes\"")
        .contains("\"crew\"");
  }

  @Test
  void historyCanBeginAtAMinute() throws Exception {
    pages.post("/api/files/discard", "{}");
    pages.upload(java.util.List.of(OpenPages.Sent.file("orders.csv", "order\n")));
    long now = OpenPages.NOW.getEpochSecond() / 60;
    assertThat(pages.get("/api/history?from=" + now).json().get(0).path("what").asText())
        .isEqualTo("laid orders.csv beside the folder");
    assertThat(pages.get("/api/history?from=" + (now + 1)).text()).isEqualTo("[]");
    assertThat(pages.get("/api/history?from=x").status()).isEqualTo(400);
  }
}
