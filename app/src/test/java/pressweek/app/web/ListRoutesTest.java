package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.PlanFile;

class ListRoutesTest {
  @TempDir private static Path dir;
  private static OpenPages pages;

  @BeforeAll
  static void open() throws Exception {
    pages = new OpenPages(dir, true);
  }

  @AfterAll
  static void close() {
    pages.close();
  }

  @Test
  void everyListOfTheDraftIsThere() throws Exception {
    JsonNode names = pages.get("/api/lists").json();
    assertThat(names.findValuesAsText("name"))
        .contains("schedule", "pulls", "kits", "staging", "changes", "crew", "unplaced", "trace");
    for (JsonNode name : names) {
      JsonNode list = pages.get("/api/lists/" + name.path("name").asText()).json();
      assertThat(list.path("title")).isEqualTo(name.path("title"));
      assertThat(list.path("plan").path("number").asText()).isEqualTo("2026-W49/1");
      assertThat(list.path("plan").path("draft").asBoolean()).isTrue();
      assertThat(list.path("whenEmpty").asText()).isNotEmpty();
      assertThat(pages.get("/papers/" + list.path("paper").asText()).status()).isEqualTo(200);
    }
  }

  @Test
  void cellsKeepTheirKinds() throws Exception {
    JsonNode list = pages.get("/api/lists/changes").json();
    assertThat(list.path("rows")).isNotEmpty();
    for (JsonNode row : list.path("rows")) {
      for (int i = 0; i < row.size(); i++) {
        JsonNode cell = row.get(i);
        boolean empty = cell.isTextual() && cell.textValue().isEmpty();
        boolean good =
            switch (list.path("columns").get(i).path("kind").asText()) {
              case "time", "number" -> empty || cell.isNumber();
              case "list" -> empty || cell.isArray();
              default -> cell.isTextual();
            };
        assertThat(good).as("%s in %s", cell, list.path("columns").get(i)).isTrue();
      }
    }
    assertThat(pages.get("/api/lists/pulls").json().path("caution").asText())
        .startsWith("Take from the bin and lot named");
  }

  @Test
  void unknownNamesAreNotThere() throws Exception {
    assertThat(pages.get("/api/lists/none").status()).isEqualTo(404);
    assertThat(pages.get("/papers/none.html").status()).isEqualTo(404);
    for (String path :
        List.of("/papers/../plant.json", "/papers/%2e%2e/plant.json", "/papers/..%2fx")) {
      assertThat(pages.get(path).status()).as(path).isIn(400, 404);
    }
  }

  @Test
  void papersArePagesToOpenAndFilesToKeep() throws Exception {
    JsonNode papers = pages.get("/api/papers").json();
    assertThat(papers.findValuesAsText("name"))
        .contains("index.html", "plan.xlsx", "plan.json", "papers/labels.html", "schedule.csv");
    assertThat(papers.findValuesAsText("title"))
        .contains("Pull list, to print", "Pull list, as CSV", "Calendar of press H1");
    for (JsonNode paper : papers) {
      String name = paper.path("name").asText();
      OpenPages.Answer answer = pages.get("/papers/" + name);
      assertThat(answer.response().body()).hasSize(paper.path("bytes").asInt());
      boolean kept = answer.response().headers().firstValue("Content-Disposition").isPresent();
      assertThat(kept).as(name).isEqualTo(!name.endsWith(".html"));
    }
    OpenPages.Answer plan = pages.get("/papers/plan.json");
    assertThat(PlanFile.read("plan.json", plan.text()).plan()).isPresent();
  }

  @Test
  void paperRunsNothingButItsOwnStyle() throws Exception {
    for (String name : List.of("index.html", "papers/changes.html", "papers/labels.html")) {
      OpenPages.Answer answer = pages.get("/papers/" + name);
      String policy = answer.response().headers().firstValue("Content-Security-Policy").orElse("");
      assertThat(policy)
          .startsWith("default-src 'none'")
          .contains("style-src 'sha256-")
          .doesNotContain("unsafe");
      assertThat(answer.text()).doesNotContain(" style=\"").doesNotContain(" onclick=");
    }
  }
}
