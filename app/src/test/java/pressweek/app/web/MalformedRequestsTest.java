package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.desk.Solving;
import pressweek.app.store.StoreTrouble;

/** Requests that are wrong in drawn ways, over all routes: words for a person, never a fault. */
class MalformedRequestsTest {
  private static final int REQUESTS = 2_000;
  private static final List<String> TEXTS =
      List.of(
          "",
          "null",
          "{",
          "[]",
          "{}",
          "\u0000",
          "../../etc/passwd",
          "%00",
          "-1",
          "1e999",
          "NaN",
          "9223372036854775808",
          "' OR 1=1 --",
          "<script>alert(1)</script>",
          "\ud83d\ude00",
          "a".repeat(9_000),
          "52103/2",
          "V1",
          "\"",
          "\\",
          "\r\nX: y",
          "true");
  private static final List<String> NAMES =
      List.of(
          "version",
          "line",
          "press",
          "place",
          "kind",
          "seconds",
          "now",
          "events",
          "ticks",
          "id",
          "key",
          "pieces",
          "name",
          "role",
          "password",
          "text",
          "why",
          "file",
          "mapping",
          "scenarios",
          "seeds",
          "at");

  @Test
  void aFewRequestsAreAnsweredInWords(@TempDir Path folder) throws IOException, StoreTrouble {
    asked(folder, 150, 7);
  }

  @Test
  @Tag("full")
  void manyRequestsAreAnsweredInWords(@TempDir Path folder) throws IOException, StoreTrouble {
    asked(folder, REQUESTS, 1);
  }

  private static void asked(Path folder, int count, long seed) throws IOException, StoreTrouble {
    SplittableRandom random = new SplittableRandom(seed);
    TreeMap<Integer, Integer> statuses = new TreeMap<>();
    try (Opened opened = Opened.local(folder)) {
      Set<String> before = lines(opened);
      List<Route> routes =
          Routes.all(opened.desk, new Solving(opened.desk), Listening.local(1, "nobody"));
      for (int i = 0; i < count; i++) {
        Route route = routes.get(random.nextInt(routes.size()));
        HttpResponse<String> answer = answer(opened, route, random);
        statuses.merge(answer.statusCode(), 1, Integer::sum);
        assertThat(answer.statusCode()).as(route.path() + " " + answer.body()).isLessThan(500);
        assertThat(answer.body())
            .as(route.path())
            .doesNotContain("Exception")
            .doesNotContain("at pressweek.")
            .doesNotContain("root:x:");
        // an address that is too long is refused before it comes to the routes
        if (answer.statusCode() >= 400 && answer.statusCode() != 414) {
          assertThat(answer.body()).as(route.path()).contains("\"words\"");
        }
      }
      // a drawn request may be a right one; whatever it did, no line is lost and no rule broken
      assertThat(lines(opened)).isEqualTo(before);
      assertThat(opened.get("/api/week").path("findings")).isEmpty();
    }
    assertThat(statuses).containsKeys(200, 400, 404);
  }

  private static Set<String> lines(Opened opened) throws IOException {
    JsonNode week = opened.get("/api/week");
    Set<String> lines = new TreeSet<>(week.path("runs").findValuesAsText("line"));
    lines.addAll(week.path("unplaced").findValuesAsText("line"));
    return lines;
  }

  private static HttpResponse<String> answer(Opened opened, Route route, SplittableRandom random)
      throws IOException {
    String path = route.path().replaceAll("[{<][a-z]+[}>]", "%2e%2e" + random.nextInt(100));
    StringBuilder query = new StringBuilder("?");
    for (int i = random.nextInt(4); i > 0; i--) {
      query.append(NAMES.get(random.nextInt(NAMES.size()))).append('=');
      String text = TEXTS.get(random.nextInt(TEXTS.size()));
      query.append(java.net.URLEncoder.encode(text, java.nio.charset.StandardCharsets.UTF_8));
      query.append('&');
    }
    if (route.method().name().equals("POST")) {
      return opened.post(path + query, body(random));
    }
    URI at = opened.at(path + query);
    return opened.send(HttpRequest.newBuilder(at));
  }

  private static String body(SplittableRandom random) {
    if (random.nextInt(4) == 0) {
      return TEXTS.get(random.nextInt(TEXTS.size()));
    }
    StringBuilder json = new StringBuilder("{");
    for (int i = random.nextInt(6); i > 0; i--) {
      json.append(json.length() > 1 ? "," : "");
      json.append('"').append(NAMES.get(random.nextInt(NAMES.size()))).append("\":");
      json.append(value(random));
    }
    return json.append("}").toString();
  }

  private static String value(SplittableRandom random) {
    String text = TEXTS.get(random.nextInt(TEXTS.size()));
    return switch (random.nextInt(6)) {
      case 0 -> String.valueOf(random.nextInt());
      case 1 -> "null";
      case 2 -> "[" + random.nextInt(5) + "]";
      case 3 -> "{\"event\":\"rush\",\"id\":3}";
      case 4 -> "1";
      default -> Opened.JSON.valueToTree(text).toString();
    };
  }
}
