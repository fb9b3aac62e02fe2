package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
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
}
