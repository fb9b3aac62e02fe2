package pressweek.examples.pages;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import pressweek.app.desk.Desk;
import pressweek.app.desk.FolderLook;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.app.web.Listening;
import pressweek.app.web.Server;
import pressweek.data.plan.Settings;

/** The pages of a plant's folder on this machine, its plan given out to the floor. */
final class Served implements AutoCloseable {
  private final Store store;
  private final Server server;
  final Desk desk;

  /**
   * Plans the week, gives it out and serves it.
   *
   * @param folder the plant's folder
   * @param kept where the store's file is to be
   * @param now the present
   * @param steps steps of the search
   */
  Served(Path folder, Path kept, Instant now, int steps) throws IOException, StoreTrouble {
    store = Store.open(kept.toString());
    Clock clock = Clock.fixed(now, ZoneOffset.UTC);
    desk = new Desk(store, new FolderLook(folder, (int) (now.getEpochSecond() / 60)), clock);
    desk.begin(new Settings(0, steps, 1), "tester", progress -> {});
    desk.giveOut(desk.standing().orElseThrow().version(), Change.of("tester", now));
    server = new Server(desk, Listening.local(0, "tester"));
    server.start();
  }

  /** Where the pages are. */
  URI home() {
    return URI.create("http://localhost:" + server.port() + "/");
  }

  @Override
  public void close() {
    server.close();
    store.close();
  }
}
