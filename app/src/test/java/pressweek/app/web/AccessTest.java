package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.desk.Solving;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;

/** Who may do what: every role on every route, and what a request must bring along. */
class AccessTest {
  private static final String PASSWORD = "correct horse";

  /**
   * What each role may reach, as the beginnings of paths; a sign of + before it for changes. Typed
   * here, not derived from the routes.
   */
  private static final Map<String, Set<String>> MAY =
      Map.of(
          "order_desk",
          Set.of(
              "/api/scenarios",
              "/api/compared",
              "/compared",
              "/api/week",
              "/api/shorts",
              "/api/why",
              "/api/floor/choices",
              "/api/history",
              "/api/lists",
              "/api/papers",
              "/papers",
              "/api/decode",
              "/api/words",
              "/api/codes",
              "/api/files",
              "/api/headings",
              "/changes",
              "/crew",
              "/codes",
              "/files",
              "/history"),
          "handler",
          Set.of(
              "/api/scenarios",
              "/api/compared",
              "/compared",
              "/api/pulls",
              "+/api/ticks",
              "+/api/scan",
              "/api/lists",
              "/api/papers",
              "/papers",
              "/pulls",
              "/changes",
              "/crew"),
          "setter",
          Set.of(
              "/api/scenarios",
              "/api/compared",
              "/compared",
              "/api/week",
              "/api/shorts",
              "/api/why",
              "/api/floor/choices",
              "/api/history",
              "/api/pulls",
              "+/api/scan",
              "/api/lists",
              "/api/papers",
              "/papers",
              "/pulls",
              "/changes",
              "/crew",
              "/history"),
          "viewer",
          Set.of(
              "/api/scenarios",
              "/api/compared",
              "/compared",
              "/api/week",
              "/api/shorts",
              "/api/why",
              "/api/floor/choices",
              "/api/history",
              "/api/pulls",
              "+/api/scan",
              "/api/lists",
              "/api/papers",
              "/papers",
              "/api/figures",
              "/pulls",
              "/changes",
              "/crew",
              "/figures",
              "/history"),
          "scheduler",
          Set.of("/", "+/"));

  /** Looking at what would help a line plans the week again: only for who may change it. */
  private static final Set<String> NEVER_LOOKED_AT = Set.of("/api/why/cures");

  private static Opened opened;

  @BeforeAll
  static void open(@TempDir Path folder) throws IOException, StoreTrouble {
    opened = Opened.network(folder);
    for (String role : MAY.keySet()) {
      assertThat(new People(opened.store).put(role, role, PASSWORD, Change.of("test", Opened.NOW)))
          .isEmpty();
    }
  }

  @AfterAll
  static void close() {
    opened.close();
  }

  private static HttpResponse<String> login(String name, String password) throws IOException {
    return opened.send(
        HttpRequest.newBuilder(opened.at("/api/login"))
            .POST(
                HttpRequest.BodyPublishers.ofString(
                    "{\"name\":\"" + name + "\",\"password\":\"" + password + "\"}")));
  }

  /** Cookie and word of somebody who has logged in. */
  private record Person(String cookie, String word) {}

  private static Person person(String name) throws IOException {
    HttpResponse<String> answer = login(name, PASSWORD);
    assertThat(answer.statusCode()).isEqualTo(200);
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    assertThat(cookie).contains("HttpOnly").contains("SameSite=Strict").contains("Secure");
    String bare = cookie.substring(0, cookie.indexOf(';'));
    HttpResponse<String> me =
        opened.send(HttpRequest.newBuilder(opened.at("/api/me")).header("Cookie", bare));
    JsonNode json = Opened.JSON.readTree(me.body());
    assertThat(json.path("name").asText()).isEqualTo(name);
    return new Person(bare, json.path("token").asText());
  }

  private static List<Route> routes() {
    return Routes.all(opened.desk, new Solving(opened.desk), Listening.local(1, "nobody"));
  }

  private static String path(Route route) {
    return route.path().replaceAll("[{<][a-z]+[}>]", "none");
  }

  private static HttpRequest.Builder request(Route route) {
    HttpRequest.Builder request = HttpRequest.newBuilder(opened.at(path(route)));
    return isChange(route) ? request.POST(HttpRequest.BodyPublishers.ofString("no JSON")) : request;
  }

  private static boolean isChange(Route route) {
    return route.method().name().equals("POST");
  }

  private static boolean may(String role, Route route) {
    if (route.right() == Right.OPEN || route.right() == Right.KNOWN) {
      return true;
    }
    if (NEVER_LOOKED_AT.contains(route.path())) {
      return role.equals("scheduler");
    }
    String wanted = (isChange(route) ? "+" : "") + route.path();
    return MAY.get(role).stream().anyMatch(wanted::startsWith);
  }

  @Test
  void everyRoleOnEveryRoute() throws IOException {
    Map<String, TreeSet<String>> wrong = new HashMap<>();
    int asked = 0;
    for (String role : MAY.keySet()) {
      Person person = person(role);
      for (Route route : routes()) {
        if (route.path().equals("/api/logout") || route.path().equals("/api/login")) {
          continue;
        }
        int status =
            opened
                .send(
                    request(route)
                        .header("Cookie", person.cookie())
                        .header(Access.TOKEN, person.word()))
                .statusCode();
        boolean let = status != 401 && status != 403;
        if (let != may(role, route) || status >= 500) {
          wrong.computeIfAbsent(role, r -> new TreeSet<>()).add(route.path() + " " + status);
        }
        asked++;
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(asked).isGreaterThan(200);
  }

  @Test
  void whoIsNotLoggedInReachesOnlyWhatIsOpen() throws IOException {
    for (Route route : routes()) {
      int status = opened.send(request(route)).statusCode();
      if (route.right() == Right.OPEN) {
        assertThat(status).as(route.path()).isNotIn(401, 403);
      } else {
        assertThat(status).as(route.path()).isIn(401, 302);
      }
    }
    assertThat(opened.ask(Live.PATH).statusCode()).isEqualTo(401);
  }

  @Test
  void aChangeWantsTheWordOfThePages() throws IOException {
    Person person = person("scheduler");
    HttpRequest.Builder without =
        HttpRequest.newBuilder(opened.at("/api/week/solve/stop"))
            .header("Cookie", person.cookie())
            .POST(HttpRequest.BodyPublishers.ofString("{}"));
    assertThat(opened.send(without).statusCode()).isEqualTo(403);
    assertThat(opened.send(without.copy().header(Access.TOKEN, "0".repeat(64))).statusCode())
        .isEqualTo(403);
    assertThat(opened.send(without.copy().header(Access.TOKEN, person.word())).statusCode())
        .isEqualTo(200);
  }

  @Test
  void aChangeFromAnotherPlaceIsRefused() throws IOException {
    Person person = person("scheduler");
    HttpRequest.Builder right =
        HttpRequest.newBuilder(opened.at("/api/week/solve/stop"))
            .header("Cookie", person.cookie())
            .header(Access.TOKEN, person.word())
            .POST(HttpRequest.BodyPublishers.ofString("{}"));
    assertThat(opened.send(right.copy().header("Origin", "https://elsewhere.example")).statusCode())
        .isEqualTo(403);
    assertThat(opened.send(right.copy().header("Origin", "null")).statusCode()).isEqualTo(403);
    assertThat(opened.send(right.copy().header("Sec-Fetch-Site", "cross-site")).statusCode())
        .isEqualTo(403);
    String own = "https://localhost:" + opened.server.port();
    assertThat(opened.send(right.copy().header("Origin", own)).statusCode()).isEqualTo(200);
  }

  @Test
  void loginsThatFailAreCountedAndThenHeldBack() throws IOException, StoreTrouble {
    new People(opened.store).put("Often", "viewer", PASSWORD, Change.of("test", Opened.NOW));
    for (int i = 0; i < 5; i++) {
      HttpResponse<String> wrong = login("Often", "wrong password");
      assertThat(wrong.statusCode()).isEqualTo(401);
      assertThat(wrong.body()).contains("name or password is wrong");
    }
    assertThat(login("Often", PASSWORD).statusCode()).isEqualTo(429);
    assertThat(login("viewer", PASSWORD).statusCode()).isEqualTo(200);
  }

  @Test
  void whoIsAwayOrHasAnotherPasswordIsLoggedOut() throws IOException, StoreTrouble {
    new People(opened.store).put("Ina", "viewer", PASSWORD, Change.of("test", Opened.NOW));
    Person ina = person("Ina");
    HttpRequest.Builder me =
        HttpRequest.newBuilder(opened.at("/api/me")).header("Cookie", ina.cookie());
    assertThat(opened.send(me).statusCode()).isEqualTo(200);
    new People(opened.store).put("Ina", "viewer", "another one", Change.of("test", Opened.NOW));
    assertThat(opened.send(me).statusCode()).isEqualTo(401);
    assertThat(login("Ina", PASSWORD).statusCode()).isEqualTo(401);
  }

  @Test
  void everyAnswerSaysWhatABrowserMayDo() throws IOException {
    for (String path : List.of("/login", "/api/me", "/assets/base.css", "/none")) {
      Map<String, List<String>> headers = opened.ask(path).headers().map();
      assertThat(headers.get("content-security-policy"))
          .as(path)
          .anyMatch(p -> p.contains("default-src 'self'") && p.contains("frame-ancestors 'none'"))
          .noneMatch(p -> p.contains("unsafe"));
      assertThat(headers.get("x-content-type-options")).containsExactly("nosniff");
      assertThat(headers.get("strict-transport-security")).isNotEmpty();
    }
  }
}
