package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.StoreTrouble;
import pressweek.data.plan.Plan;

/** The week by the routes that the week wall uses. */
class WeekRoutesTest {
  private static Opened opened;

  @BeforeAll
  static void open(@TempDir Path folder) throws IOException, StoreTrouble {
    opened = Opened.local(folder);
  }

  @AfterAll
  static void close() {
    opened.close();
  }

  private static JsonNode week() throws IOException {
    return opened.get("/api/week");
  }

  private static JsonNode free(JsonNode week) {
    for (JsonNode run : week.path("runs")) {
      if (!run.path("promised").asBoolean() && !run.path("running").asBoolean()) {
        return run;
      }
    }
    throw new AssertionError("no run is free");
  }

  private static String body(JsonNode week, String more) {
    return "{\"version\":" + week.path("version") + more + "}";
  }

  private static JsonNode json(HttpResponse<String> answer, int status) throws IOException {
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
    return Opened.JSON.readTree(answer.body());
  }

  @Test
  void theWeekIsThePlanOnTheDesk() throws IOException, StoreTrouble {
    JsonNode week = week();
    Plan plan = opened.desk.standing().orElseThrow().week().plan();
    assertThat(week.path("plan").path("number").asText()).isEqualTo(plan.head().number());
    assertThat(week.path("cost").asLong()).isEqualTo(plan.figures().avoidableCost());
    assertThat(week.path("runs")).hasSize(plan.runs().size());
    assertThat(week.path("presses")).hasSize(plan.problem().floor().presses().size());
    assertThat(week.path("unplaced")).hasSize(plan.unplaced().size());
    for (int i = 0; i < plan.runs().size(); i++) {
      JsonNode run = week.path("runs").get(i);
      assertThat(run.path("line").asText()).isEqualTo(plan.runs().get(i).job());
      assertThat(run.path("from").asInt()).isEqualTo(plan.runs().get(i).startMin());
      assertThat(run.path("to").asInt()).isEqualTo(plan.runs().get(i).endMin());
    }
  }

  @Test
  void aPlaceCostsWhatItSays() throws IOException {
    JsonNode week = week();
    String line = free(week).path("line").asText();
    JsonNode place = opened.get("/api/week/places?line=" + line).path("places").get(0);
    String move =
        ",\"line\":\"%s\",\"press\":%s,\"place\":%s"
            .formatted(line, place.path("press"), place.path("place"));
    JsonNode trial = json(opened.post("/api/week/trial", body(week, move)), 200);
    assertThat(trial.path("possible").asBoolean()).isTrue();
    assertThat(trial.path("costMore").asLong()).isEqualTo(place.path("costsMore").asLong());
    assertThat(week().path("version")).isEqualTo(week.path("version"));
    JsonNode after =
        json(opened.post("/api/week/edits", body(week, ",\"kind\":\"move\"" + move)), 200);
    assertThat(after.path("cost").asLong() - week.path("cost").asLong())
        .isEqualTo(place.path("costsMore").asLong());
    assertThat(after.path("undo").asText()).startsWith("moved " + line);
    JsonNode stale =
        json(
            opened.post(
                "/api/week/edits", body(week, ",\"kind\":\"hold\",\"line\":\"" + line + "\"")),
            409);
    assertThat(stale.path("words").asText()).startsWith("tester was first: moved " + line);
    JsonNode back = json(opened.post("/api/week/undo", body(after, "")), 200);
    assertThat(back.path("cost")).isEqualTo(week.path("cost"));
    assertThat(back.path("redo").asText()).startsWith("moved " + line);
  }

  @Test
  void whyALineIsWhereItIs() throws IOException {
    String line = free(week()).path("line").asText();
    JsonNode why = opened.get("/api/why?line=" + line);
    assertThat(why.path("line").asText()).isEqualTo(line);
    assertThat(why.path("time")).isNotEmpty();
    long sum = 0;
    for (JsonNode charge : why.path("charges")) {
      sum += charge.path("amount").asLong();
      assertThat(charge.path("words").asText()).isNotEmpty();
    }
    assertThat(sum).isEqualTo(why.path("cost").asLong());
    assertThat(opened.ask("/api/why?line=none").statusCode()).isEqualTo(404);
  }

  @Test
  void anEmptyPlaceSaysWhatCouldRunThere() throws IOException {
    JsonNode week = week();
    String press = free(week).path("press").asText();
    JsonNode room =
        opened.get("/api/week/room?press=" + press + "&at=" + (week.path("start").asInt() + 600));
    assertThat(room.path("version")).isEqualTo(week.path("version"));
    long before = Long.MIN_VALUE;
    for (JsonNode line : room.path("lines")) {
      assertThat(line.path("press").asText()).isEqualTo(press);
      assertThat(line.path("costsMore").asLong()).isGreaterThanOrEqualTo(before);
      before = line.path("costsMore").asLong();
    }
  }

  @Test
  void whatIsWrongIsSaidInWords() throws IOException {
    JsonNode week = week();
    String line = free(week).path("line").asText();
    assertThat(json(opened.post("/api/week/edits", "{"), 400).path("words").asText())
        .isEqualTo("the body is not JSON; expected an object");
    assertThat(json(opened.post("/api/week/edits", "{}"), 400).path("words").asText())
        .contains("version");
    String odd = body(week, ",\"kind\":\"fly\",\"line\":\"" + line + "\"");
    assertThat(json(opened.post("/api/week/edits", odd), 400).path("words").asText())
        .contains("expected move, promise");
    String none = body(week, ",\"line\":\"" + line + "\",\"press\":\"none\",\"place\":0");
    JsonNode trial = json(opened.post("/api/week/trial", none), 200);
    assertThat(trial.path("possible").asBoolean()).isFalse();
    assertThat(trial.path("words").asText()).isEqualTo("the plant has no press none");
    String early = body(week, ",\"now\":1,\"events\":[]");
    assertThat(json(opened.post("/api/floor", early), 422).path("words").get(0).asText())
        .contains("is outside the plan");
    String events =
        body(
            week,
            ",\"now\":"
                + week.path("start")
                + ",\"events\":[{\"event\":\"press-away\",\"what\":\"none\"}]");
    assertThat(json(opened.post("/api/floor", events), 422).path("words")).isNotEmpty();
  }

  @Test
  void aHostThatIsNotOursIsRefused() throws IOException, InterruptedException {
    java.net.Socket socket = new java.net.Socket("127.0.0.1", opened.server.port());
    try (socket) {
      socket
          .getOutputStream()
          .write(
              "GET /api/me HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"
                  .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
      String answer =
          new String(
              socket.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 421").contains("do not go by that name");
      assertThat(answer).doesNotContain("token");
    }
  }

  @Test
  void whatCanHaveHappenedIsAskedByForms() throws IOException {
    JsonNode events = opened.get("/api/floor/choices").path("events");
    assertThat(List.copyOf(events.findValuesAsText("event")))
        .containsExactly(
            "press-away",
            "mold-away",
            "person-away",
            "finished",
            "count-short",
            "lot-held",
            "rush",
            "dropped",
            "on-hold");
  }
}
