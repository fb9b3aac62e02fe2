package pressweek.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.desk.Copied;
import pressweek.app.desk.Desk;
import pressweek.app.desk.DeskEvent;
import pressweek.app.desk.Edit;
import pressweek.app.desk.FolderLook;
import pressweek.app.desk.Taken;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;

/** Two servers on one store and one folder: each is told what the other did, and only that. */
class LookoutTest {
  private final List<DeskEvent> told = new ArrayList<>();

  private static Desk desk(Store store, Path folder) throws IOException {
    int nowMin = (int) (Opened.NOW.getEpochSecond() / 60);
    return new Desk(store, new FolderLook(folder, nowMin), Clock.fixed(Opened.NOW, ZoneOffset.UTC));
  }

  private static Change by(String name) {
    return Change.of(name, Opened.NOW);
  }

  /** The line that starts last, which is not running yet. */
  private static String line(Desk desk) throws StoreTrouble {
    return desk.standing().orElseThrow().week().plan().runs().stream()
        .max(Comparator.comparingInt(Run::startMin))
        .orElseThrow()
        .job();
  }

  private static long version(Desk desk) throws StoreTrouble {
    return desk.standing().orElseThrow().version();
  }

  @Test
  void whatAnotherServerDidIsTold(@TempDir Path dir) throws IOException, StoreTrouble {
    Path folder = Copied.example("quillback-small", dir.resolve("plant"));
    try (Store store = Store.open(dir.resolve("store.db").toString())) {
      Desk here = desk(store, folder);
      Desk there = desk(store, folder);
      here.begin(new Settings(0, 20, 1), "Ana", progress -> {});
      try (Lookout lookout = new Lookout(here)) {
        lookout.look();
        here.listen(told::add);
        lookout.look();
        assertThat(told).as("nothing happened").isEmpty();

        assertThat(there.edit(version(there), new Edit.Promise(line(there)), by("Bo")))
            .isInstanceOf(Taken.Done.class);
        lookout.look();
        lookout.look();
        assertThat(told).hasSize(1).first().isInstanceOf(DeskEvent.Changed.class);
        assertThat(((DeskEvent.Changed) told.get(0)).by()).isEqualTo("Bo");

        there.giveOut(version(there), by("Bo"));
        lookout.look();
        lookout.look();
        assertThat(told).hasSize(2);
        assertThat(((DeskEvent.Changed) told.get(1)).what()).startsWith("gave out plan");
        assertThat(here.standing().orElseThrow().givenOut()).isTrue();

        here.edit(version(here), new Edit.LetGo(line(here)), by("Ana"));
        lookout.look();
        assertThat(told).as("its own change once").hasSize(3);
      }
    }
  }

  @Test
  void aFileThatChangesIsTold(@TempDir Path dir) throws IOException, StoreTrouble {
    Path folder = Copied.example("quillback-small", dir.resolve("plant"));
    try (Store store = Store.open(dir.resolve("store.db").toString())) {
      Desk desk = desk(store, folder);
      desk.begin(new Settings(0, 20, 1), "Ana", progress -> {});
      try (Lookout lookout = new Lookout(desk)) {
        lookout.look();
        desk.listen(told::add);
        Path orders = folder.resolve("orders.csv");
        String before = Files.readString(orders);
        Files.writeString(orders, before + "\n");
        lookout.look();
        assertThat(told).containsExactly(new DeskEvent.FilesChanged(List.of("orders.csv changed")));
        Files.writeString(orders, before);
        lookout.look();
        assertThat(told).hasSize(2).last().isEqualTo(new DeskEvent.FilesChanged(List.of()));
      }
    }
  }
}
