package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.plan.Pull;

class PullRoutesTest {
  @TempDir private static Path dir;
  private static OpenPages pages;

  @BeforeAll
  static void open() throws Exception {
    pages = new OpenPages(dir, true);
    pages.giveOut();
  }

  @AfterAll
  static void close() {
    pages.close();
  }

  private static JsonNode pull(int place) throws Exception {
    return pages.get("/api/pulls").json().path("rows").get(place);
  }

  private static OpenPages.Answer tick(String... ticks) throws Exception {
    return pages.post("/api/ticks", "{\"ticks\":[" + String.join(",", ticks) + "]}");
  }

  private static String tick(UUID id, JsonNode pull, String more) {
    return "{\"id\":\"%s\",\"key\":\"%s\",\"pieces\":%d,\"at\":29700000%s}"
        .formatted(id, pull.path("key").asText(), pull.path("pieces").asInt(), more);
  }

  @Test
  void pullsAreThoseOfThePlanOnTheFloor() throws Exception {
    JsonNode json = pages.get("/api/pulls").json();
    List<Pull> planned = pages.desk.lastGivenOut().orElseThrow().pulls();
    assertThat(json.path("plan").path("number").asText()).isEqualTo("2026-W49/1");
    assertThat(json.path("plan").path("draft").asBoolean()).isFalse();
    assertThat(json.path("rows")).hasSameSizeAs(planned).isNotEmpty();
    List<String> keys = json.path("rows").findValuesAsText("key");
    assertThat(new HashSet<>(keys)).hasSameSizeAs(keys);
    JsonNode row = json.path("rows").get(0);
    Pull pull =
        planned.stream()
            .filter(p -> p.run().equals(row.path("run").asText()))
            .filter(p -> p.insert().equals(row.path("insert").asText()))
            .filter(p -> p.lot().equals(row.path("lot").asText()))
            .findFirst()
            .orElseThrow();
    assertThat(row.path("pieces").asInt()).isEqualTo(pull.pieces());
    assertThat(row.path("bin").asText()).isEqualTo(pull.bin());
    assertThat(row.path("unit").asText()).isEqualTo("pcs");
    assertThat(row.path("key").asText())
        .startsWith(row.path("order").asText() + "/" + row.path("line").asText() + "|");
    String press = row.path("press").asText();
    JsonNode mine = pages.get("/api/pulls?press=" + press + "," + press).json().path("rows");
    assertThat(mine.findValuesAsText("press")).isNotEmpty().containsOnly(press);
    assertThat(pages.get("/api/pulls?press=none").json().path("rows")).isEmpty();
  }

  @Test
  void tickIsTakenOnceHoweverOftenItIsSent() throws Exception {
    UUID id = UUID.randomUUID();
    String tick = tick(id, pull(0), ",\"by\":\"Hana\"");
    for (int i = 0; i < 3; i++) {
      OpenPages.Answer answer = tick(tick);
      assertThat(answer.status()).isEqualTo(200);
      assertThat(answer.json().path("taken").get(0).asText()).isEqualTo(id.toString());
      assertThat(answer.json().path("refused")).isEmpty();
    }
    JsonNode ticked = pull(0).path("ticked");
    assertThat(ticked.path("id").asText()).isEqualTo(id.toString());
    assertThat(ticked.path("by").asText()).isEqualTo("Hana (sent by tester)");
    assertThat(ticked.path("at").asInt()).isEqualTo(29_700_000);
    long lines =
        pages.get("/api/history").json().findValuesAsText("about").stream()
            .filter(("pull " + keyOf(0))::equals)
            .count();
    assertThat(lines).isEqualTo(1);
  }

  private static String keyOf(int place) throws Exception {
    return pull(place).path("key").asText();
  }

  @Test
  void undoTakesBackWhatStandsAndNothingLater() throws Exception {
    UUID undo = UUID.randomUUID();
    String back = tick(undo, pull(1), ",\"undo\":true");
    tick(tick(UUID.randomUUID(), pull(1), ""), tick(UUID.randomUUID(), pull(1), ""), back);
    assertThat(pull(1).path("ticked").isNull()).isTrue();
    UUID later = UUID.randomUUID();
    tick(tick(later, pull(1), ""));
    assertThat(tick(back).json().path("taken").get(0).asText()).isEqualTo(undo.toString());
    assertThat(pull(1).path("ticked").path("id").asText()).isEqualTo(later.toString());
  }

  @Test
  void undoOfNothingIsKnownWhenItIsSentAgain() throws Exception {
    String back = tick(UUID.randomUUID(), pull(2), ",\"undo\":true");
    assertThat(tick(back).status()).isEqualTo(200);
    tick(tick(UUID.randomUUID(), pull(2), ""));
    tick(back);
    assertThat(pull(2).path("ticked").isNull()).isFalse();
  }

  @Test
  void shortNeedsAReasonAndBadTicksDoNotKeepBackGoodOnes() throws Exception {
    UUID good = UUID.randomUUID();
    UUID bare = UUID.randomUUID();
    UUID minus = UUID.randomUUID();
    String key = keyOf(3);
    OpenPages.Answer answer =
        tick(
            "{\"id\":\""
                + good
                + "\",\"key\":\""
                + key
                + "\",\"pieces\":5,\"short\":7,\"reason\":\"bin empty\"}",
            "{\"id\":\"" + bare + "\",\"key\":\"" + key + "\",\"pieces\":5,\"short\":7}",
            "{\"id\":\"" + minus + "\",\"key\":\"" + key + "\",\"pieces\":-5}",
            "{\"id\":\"17\",\"key\":\"" + key + "\",\"pieces\":5}");
    assertThat(answer.status()).isEqualTo(200);
    assertThat(answer.json().path("taken")).hasSize(1);
    assertThat(answer.json().path("refused").findValuesAsText("id"))
        .containsExactly(bare.toString(), minus.toString(), "17");
    assertThat(answer.json().path("refused").get(0).path("words").asText()).contains("reason");
    JsonNode ticked = pull(3).path("ticked");
    assertThat(ticked.path("short").asInt()).isEqualTo(7);
    assertThat(ticked.path("reason").asText()).isEqualTo("bin empty");
  }

  @Test
  void whatIsNoListOfTicksIsRefused() throws Exception {
    assertThat(pages.post("/api/ticks", "{}").status()).isEqualTo(400);
    assertThat(pages.post("/api/ticks", "[]").status()).isEqualTo(400);
    assertThat(pages.post("/api/ticks", "{\"ticks\":[{}]}").status()).isEqualTo(400);
    assertThat(pages.post("/api/ticks", "{\"ticks\":[7]}").status()).isEqualTo(400);
  }

  @Test
  void labelsOfThisWeekAreKnown() throws Exception {
    JsonNode row = pull(4);
    String run = row.path("run").asText();
    JsonNode found = scan("2026-W49/1 " + run);
    assertThat(found.path("key").asText()).isNotEmpty();
    assertThat(found.path("words").asText()).contains(" for " + row.path("press").asText());
    JsonNode lot = scan(row.path("lot").asText().toLowerCase(java.util.Locale.ROOT));
    assertThat(lot.path("key").asText()).isNotEmpty();
    JsonNode other = scan("2026-W48/2 " + run);
    assertThat(other.path("key").asText()).isEmpty();
    assertThat(other.path("words").asText()).contains("of plan 2026-W48/2");
    assertThat(scan("nothing").path("words").asText()).contains("\"nothing\"");
    assertThat(pages.post("/api/scan", "{}").status()).isEqualTo(400);
  }

  private static JsonNode scan(String text) throws Exception {
    return pages.post("/api/scan", "{\"text\":\"" + text + "\"}").json();
  }

  @Test
  void whatIsShortIsToldToWhoeverPlans() throws Exception {
    JsonNode pull = pull(2);
    int needed = pull.path("pieces").asInt();
    tick(tick(UUID.randomUUID(), pull, ",\"short\":3,\"reason\":\"bin empty\",\"by\":\"Hana\""));
    List<JsonNode> rows = new ArrayList<>();
    pages.get("/api/shorts").json().path("rows").forEach(rows::add);
    JsonNode row =
        rows.stream()
            .filter(r -> r.path("reason").asText().equals("bin empty"))
            .findFirst()
            .orElseThrow();
    assertThat(row.path("short").asInt()).isEqualTo(3);
    assertThat(row.path("needed").asInt()).isEqualTo(needed);
    assertThat(row.path("press")).isEqualTo(pull.path("press"));
    assertThat(row.path("insert")).isEqualTo(pull.path("insert"));
    assertThat(pull.path("key").asText()).startsWith(row.path("line").asText() + "|");
    tick(tick(UUID.randomUUID(), pull, ",\"undo\":true"));
    assertThat(pages.get("/api/shorts").json().path("rows").findValuesAsText("reason"))
        .doesNotContain("bin empty");
  }
}
