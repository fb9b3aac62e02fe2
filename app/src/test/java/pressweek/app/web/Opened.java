package pressweek.app.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Set;
import pressweek.app.desk.Copied;
import pressweek.app.desk.Desk;
import pressweek.app.desk.FolderLook;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.data.plan.Settings;
import pressweek.solver.Watcher;

/** A server of the pages of a small plant, on a port that is free. */
final class Opened implements AutoCloseable {
  static final Instant NOW = Instant.parse("2026-11-30T05:00:00Z");
  static final ObjectMapper JSON = new ObjectMapper();

  final Desk desk;
  final Store store;
  final Server server;
  final Path plant;
  final HttpClient http = HttpClient.newHttpClient();
  private String token = "";

  private Opened(Path folder, Listening listening, boolean planned)
      throws IOException, StoreTrouble {
    plant = Copied.example("quillback-small", folder.resolve("plant"));
    store = Store.open(folder.resolve("store.db").toString());
    int nowMin = (int) (NOW.getEpochSecond() / 60);
    desk = new Desk(store, new FolderLook(plant, nowMin), Clock.fixed(NOW, ZoneOffset.UTC));
    if (planned) {
      desk.begin(new Settings(0, 60, 1), "tester", Watcher.NONE);
    }
    server = new Server(desk, listening);
    server.start();
  }

  /** On this machine, nobody logs in. */
  static Opened local(Path folder) throws IOException, StoreTrouble {
    Opened opened = new Opened(folder, Listening.local(0, "tester"), true);
    opened.token = opened.get("/api/me").path("token").asText();
    return opened;
  }

  /** As it is said. */
  static Opened by(Path folder, Listening listening) throws IOException, StoreTrouble {
    return new Opened(folder, listening, true);
  }

  /** Behind a proxy, with login. */
  static Opened network(Path folder) throws IOException, StoreTrouble {
    Set<String> names = Set.of("localhost", "127.0.0.1");
    return new Opened(
        folder, new Listening("127.0.0.1", 0, names, new Listening.Door.Proxy()), true);
  }

  /** The address of a path. */
  URI at(String path) {
    return URI.create("http://localhost:" + server.port() + path);
  }

  /**
   * Sends a request; once more where the server had closed the connection that the client kept, as
   * it does after requests that it does not read to the end.
   */
  HttpResponse<String> send(HttpRequest.Builder request) throws IOException {
    HttpRequest built = request.timeout(Duration.ofSeconds(60)).build();
    try {
      return sent(built);
    } catch (IOException e) {
      return sent(built);
    }
  }

  private HttpResponse<String> sent(HttpRequest request) throws IOException {
    try {
      return http.send(request, HttpResponse.BodyHandlers.ofString());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
  }

  /** What is answered to a GET, whatever the status. */
  HttpResponse<String> ask(String path) throws IOException {
    return send(HttpRequest.newBuilder(at(path)));
  }

  /** The JSON that is answered to a GET. */
  JsonNode get(String path) throws IOException {
    return JSON.readTree(ask(path).body());
  }

  /** What is answered to a POST with the word of the pages. */
  HttpResponse<String> post(String path, String body) throws IOException {
    return send(
        HttpRequest.newBuilder(at(path))
            .header(Access.TOKEN, token)
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  @Override
  public void close() {
    server.close();
    store.close();
  }
}
