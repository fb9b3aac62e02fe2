package pressweek.app.web.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Set;
import pressweek.app.desk.Copied;
import pressweek.app.desk.Desk;
import pressweek.app.desk.Edit;
import pressweek.app.desk.FolderLook;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.app.web.Listening;
import pressweek.app.web.People;
import pressweek.app.web.Server;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.solver.Watcher;

/** A small plant with a plan, its pages open, the plan given out to the floor. */
final class Plant implements AutoCloseable {
  static final String PASSWORD = "correct horse";
  static final Instant NOW = Instant.parse("2026-11-30T05:00:00Z");
  private static final ObjectMapper JSON = new ObjectMapper();

  final Path folder;
  final Store store;
  private Desk desk;
  private Server server;

  private Plant(String example, Path at, Clock clock, Listening listening)
      throws IOException, StoreTrouble {
    folder = Copied.example(example, at.resolve("plant"));
    Copied.scenarios(example, folder);
    store = Store.open(at.resolve("store.db").toString());
    desk = desk(clock);
    desk.begin(new Settings(0, 60, 1), "tester", Watcher.NONE);
    desk.giveOut(version(), Change.of("tester", NOW));
    server = opened(listening);
  }

  private Desk desk(Clock clock) throws IOException {
    int nowMin = (int) (NOW.getEpochSecond() / 60);
    return new Desk(store, new FolderLook(folder, nowMin), clock);
  }

  private Server opened(Listening listening) {
    Server opening = new Server(desk, listening);
    opening.start();
    return opening;
  }

  /** On this machine, nobody logs in. */
  static Plant local(Path at) throws IOException, StoreTrouble {
    return local("quillback-small", at);
  }

  /** The same of another example. */
  static Plant local(String example, Path at) throws IOException, StoreTrouble {
    return new Plant(example, at, Clock.fixed(NOW, ZoneOffset.UTC), Listening.local(0, "tester"));
  }

  /**
   * With login, behind a proxy that is left out: to a browser, localhost is as safe as HTTPS. The
   * hour is the machine's own, since logins end by it.
   *
   * @param people each one's name and role; the password is {@link #PASSWORD}
   */
  static Plant network(Path at, Map<String, String> people) throws IOException, StoreTrouble {
    Listening listening =
        new Listening("127.0.0.1", 0, Set.of("localhost"), new Listening.Door.Proxy());
    Plant plant = new Plant("quillback-small", at, Clock.systemUTC(), listening);
    for (Map.Entry<String, String> person : people.entrySet()) {
      new People(plant.store)
          .put(person.getKey(), person.getValue(), PASSWORD, Change.of("tester", NOW))
          .ifPresent(
              words -> {
                throw new AssertionError(words);
              });
    }
    return plant;
  }

  /** Closes the server, as when its machine is switched off. */
  int shut() {
    int port = server.port();
    server.close();
    return port;
  }

  /** Opens a server again where one was, for this machine only. */
  void openAgain(int port) throws IOException {
    desk = desk(Clock.fixed(NOW, ZoneOffset.UTC));
    server = opened(Listening.local(port, "tester"));
  }

  /** Where its pages are. */
  URI pages() {
    return URI.create("http://localhost:" + server.port() + "/");
  }

  /** The JSON at an address, as one on this machine is answered. */
  JsonNode get(String path) throws IOException, InterruptedException {
    HttpRequest request = HttpRequest.newBuilder(pages().resolve(path)).build();
    return JSON.readTree(
        HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString()).body());
  }

  /** Changes the week on the desk, as somebody else would. */
  void edit(Edit edit) throws IOException, StoreTrouble {
    desk.edit(version(), edit, Change.of("tester", NOW));
  }

  /** The version of the week on the desk. */
  long version() throws StoreTrouble {
    return desk.standing().orElseThrow().version();
  }

  /** The plan on the desk. */
  Plan plan() throws StoreTrouble {
    return desk.standing().orElseThrow().week().plan();
  }

  /** The run of a line in the plan on the desk. */
  Run run(String line) throws StoreTrouble {
    return plan().runs().stream().filter(r -> r.job().equals(line)).findFirst().orElseThrow();
  }

  @Override
  public void close() {
    server.close();
    store.close();
  }
}
