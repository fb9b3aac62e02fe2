package pressweek.app.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import pressweek.app.desk.Desk;
import pressweek.app.desk.FolderLook;
import pressweek.app.desk.Standing;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.data.plan.Settings;

/** The pages of a copy of an example, served on this machine, and someone who asks them. */
final class OpenPages implements AutoCloseable {
  static final Path SMALL = Path.of("../examples/quillback-small");
  static final Instant NOW = Instant.parse("2026-11-30T09:00:00Z");

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String BOUNDARY = "----knobs-and-levers";

  final Path folder;
  final Desk desk;
  private final Store store;
  private final Server server;
  private final HttpClient client = HttpClient.newHttpClient();
  private final String token;

  /** An answer. */
  record Answer(int status, String type, String text, HttpResponse<byte[]> response) {
    JsonNode json() throws IOException {
      return JSON.readTree(text);
    }

    String words() throws IOException {
      return json().path("words").asText();
    }
  }

  /** A file of an upload. */
  record Sent(String part, String name, String text) {
    static Sent file(String name, String text) {
      return new Sent("files", name, text);
    }
  }

  /** Copies the small plant, lets a change be made to it, and plans it for a second. */
  OpenPages(Path dir, boolean plan) throws IOException, StoreTrouble, InterruptedException {
    folder = copy(dir.resolve("plant"));
    if (!plan) {
      Files.writeString(folder.resolve("presses.csv"), "press,kind\nH1\n");
    }
    store = Store.open(dir.resolve("store.db").toString());
    Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
    desk = new Desk(store, new FolderLook(folder, (int) (NOW.getEpochSecond() / 60)), clock);
    desk.begin(new Settings(1, 0, 1), "tester", progress -> {});
    server = new Server(desk, Listening.local(0, "tester"));
    server.start();
    token = get("/api/me").json().path("token").asText();
  }

  private static Path copy(Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(SMALL)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, to.resolve(String.valueOf(file.getFileName())));
      }
    }
    return to;
  }

  void giveOut() throws StoreTrouble {
    Standing now = desk.standing().orElseThrow();
    desk.giveOut(now.version(), Change.of("tester", NOW));
  }

  String read(String file) throws IOException {
    return Files.readString(folder.resolve(file));
  }

  Answer get(String path) throws IOException, InterruptedException {
    return send(request(path).GET());
  }

  Answer post(String path, String body) throws IOException, InterruptedException {
    return post(path, "application/json", body.getBytes(StandardCharsets.UTF_8));
  }

  Answer post(String path, String type, byte[] body) throws IOException, InterruptedException {
    return send(
        request(path)
            .header("Content-Type", type)
            .header(Access.TOKEN, token)
            .POST(HttpRequest.BodyPublishers.ofByteArray(body)));
  }

  Answer upload(List<Sent> files) throws IOException, InterruptedException {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    for (Sent file : files) {
      String head =
          "--%s\r\nContent-Disposition: form-data; name=\"%s\"; filename=\"%s\"\r\n\r\n"
              .formatted(BOUNDARY, file.part(), file.name());
      body.writeBytes((head + file.text() + "\r\n").getBytes(StandardCharsets.UTF_8));
    }
    body.writeBytes(("--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
    return post("/api/files", "multipart/form-data; boundary=" + BOUNDARY, body.toByteArray());
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
  }

  private Answer send(HttpRequest.Builder request) throws IOException, InterruptedException {
    HttpResponse<byte[]> got =
        client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    String type = got.headers().firstValue("Content-Type").orElse("");
    String text = new String(got.body(), StandardCharsets.UTF_8);
    return new Answer(got.statusCode(), type, text, got);
  }

  @Override
  public void close() {
    server.close();
    store.close();
  }
}
