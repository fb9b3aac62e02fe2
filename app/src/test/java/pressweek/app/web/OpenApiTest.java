package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.desk.Solving;
import pressweek.app.store.StoreTrouble;

/** The description of the routes against the routes, by the words of OpenAPI 3.1. */
class OpenApiTest {
  @Test
  void everyRouteIsDescribedAndNothingElse(@TempDir Path folder) throws IOException, StoreTrouble {
    try (Opened opened = Opened.local(folder)) {
      JsonNode api = opened.get("/api/openapi.json");
      assertThat(api.path("openapi").asText()).startsWith("3.1");
      assertThat(api.path("info").path("title").asText()).isNotEmpty();
      assertThat(api.path("info").path("version").asText()).isNotEmpty();
      TreeSet<String> described = new TreeSet<>();
      api.path("paths")
          .fields()
          .forEachRemaining(
              path ->
                  path.getValue()
                      .fieldNames()
                      .forEachRemaining(method -> described.add(method + " " + path.getKey())));
      TreeSet<String> there = new TreeSet<>();
      List<Route> routes =
          Routes.all(opened.desk, new Solving(opened.desk), Listening.local(1, "nobody"));
      for (Route route : routes) {
        String path = route.path().replace('<', '{').replace('>', '}');
        there.add(route.method().name().toLowerCase(java.util.Locale.ROOT) + " " + path);
      }
      there.remove("get /api/openapi.json");
      assertThat(described).isEqualTo(there);
      for (JsonNode path : api.path("paths")) {
        for (JsonNode operation : path) {
          assertThat(operation.path("summary").asText()).isNotEmpty();
          assertThat(operation.path("responses")).isNotEmpty();
        }
      }
    }
  }

  /** What is described as needed is: without it a request is refused in words that name it. */
  @Test
  void whatIsDescribedAsNeededIsNeeded(@TempDir Path folder) throws IOException, StoreTrouble {
    int asked = 0;
    try (Opened opened = Opened.local(folder)) {
      List<Route> routes =
          Routes.all(opened.desk, new Solving(opened.desk), Listening.local(1, "nobody"));
      for (Route route : routes) {
        List<String> needed =
            route.fields().stream().filter(Field::needed).map(Field::name).toList();
        if (!needed.isEmpty()) {
          boolean change = route.method().name().equals("POST");
          String path = route.path().replaceAll("[{<][a-z]+[}>]", "x");
          HttpResponse<String> answer = change ? opened.post(path, "{}") : opened.ask(path);
          assertThat(answer.statusCode()).as(path + answer.body()).isEqualTo(400);
          String words = Opened.JSON.readTree(answer.body()).path("words").asText();
          assertThat(needed.stream().map(n -> change ? "\"" + n + "\"" : "?" + n + "="))
              .as(path)
              .anyMatch(words::contains);
          asked++;
        }
      }
    }
    assertThat(asked).isGreaterThan(18);
  }
}
