package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.plan.Plan;

class FigureRoutesTest {
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
  void figuresAreThoseOfThePlan() throws Exception {
    JsonNode json = pages.get("/api/figures").json();
    Plan plan = pages.desk.standing().orElseThrow().week().plan();
    assertThat(json.path("sentence").asText()).startsWith("Of ");
    assertThat(value(json, "placed")).isEqualTo(plan.figures().placedLines());
    assertThat(value(json, "change_min")).isEqualTo(plan.figures().changeMin());
    assertThat(value(json, "cost")).isEqualTo(plan.figures().avoidableCost());
    long costs = 0;
    for (JsonNode cost : json.path("costs")) {
      costs += cost.path("amount").asLong();
    }
    assertThat(costs).isEqualTo(plan.figures().avoidableCost());
  }

  private static long value(JsonNode json, String name) {
    for (JsonNode row : json.path("rows")) {
      if (row.path("name").asText().equals(name)) {
        return row.path("value").asLong();
      }
    }
    throw new AssertionError("there is no row " + name);
  }

  @Test
  void partsOfAPressFitIntoItsShifts() throws Exception {
    JsonNode presses = pages.get("/api/figures").json().path("byPress");
    assertThat(presses.findValuesAsText("press")).contains("H1");
    int run = 0;
    int late = 0;
    for (JsonNode press : presses) {
      int parts = 0;
      for (String part : new String[] {"runMin", "changeMin", "awayMin"}) {
        assertThat(press.path(part).asInt()).isNotNegative();
        parts += press.path(part).asInt();
      }
      assertThat(parts).isLessThanOrEqualTo(press.path("openMin").asInt());
      run += press.path("runMin").asInt();
      late += press.path("lateLines").asInt();
    }
    assertThat(run).isPositive();
    assertThat(late)
        .isEqualTo(pages.desk.standing().orElseThrow().week().plan().figures().lateLines());
  }

  @Test
  void draftComesFirstUntilItIsGivenOut() throws Exception {
    JsonNode before = pages.get("/api/figures").json();
    assertThat(before.path("draft").asBoolean()).isTrue();
    assertThat(before.path("plans")).hasSize(1);
    assertThat(before.path("plans").get(0).path("givenOut").asBoolean()).isFalse();
    pages.giveOut();
    JsonNode after = pages.get("/api/figures").json();
    assertThat(after.path("draft").asBoolean()).isFalse();
    assertThat(after.path("plans")).hasSize(1);
    JsonNode given = after.path("plans").get(0);
    assertThat(given.path("givenOut").asBoolean()).isTrue();
    assertThat(given.path("number").asText()).isEqualTo("2026-W49/1");
    assertThat(given.path("cost")).isEqualTo(before.path("plans").get(0).path("cost"));
    assertThat(given.path("at").asLong()).isEqualTo(OpenPages.NOW.getEpochSecond() / 60);
  }
}
