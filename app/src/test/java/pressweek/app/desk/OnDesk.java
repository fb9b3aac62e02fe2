package pressweek.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.PressState;
import pressweek.solver.Watcher;

/** A week of the small demo plant on a desk. */
abstract class OnDesk {
  static final Instant NOW = Instant.parse("2026-11-30T05:00:00Z");
  static final Change BEA = Change.of("Bea", NOW);
  static final Change CARL = Change.of("Carl", NOW);

  @TempDir Path folder;

  Path plant;
  Store store;
  Desk desk;

  @BeforeEach
  void planned() throws IOException, StoreTrouble {
    plant = Copied.example("quillback-small", folder.resolve("plant"));
    store = Store.open(folder.resolve("store.db").toString());
    desk = opened();
    desk.begin(new Settings(0, 60, 1), "Bea", Watcher.NONE);
  }

  Desk opened() throws IOException {
    int nowMin = (int) (NOW.getEpochSecond() / 60);
    return new Desk(store, new FolderLook(plant, nowMin), Clock.fixed(NOW, ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    store.close();
  }

  Standing standing() throws StoreTrouble, IOException {
    return desk.standing().orElseThrow();
  }

  Plan plan() throws StoreTrouble, IOException {
    return standing().week().plan();
  }

  List<Run> free() throws StoreTrouble, IOException {
    Plan plan = plan();
    List<Run> free = new ArrayList<>(plan.runs());
    free.removeIf(
        r -> plan.problem().floor().promises().stream().anyMatch(p -> p.job().equals(r.job())));
    free.removeIf(
        r ->
            plan.problem().floor().states().stream()
                .map(PressState::job)
                .anyMatch(r.job()::equals));
    return free;
  }

  Standing done(Taken taken) {
    assertThat(taken).isInstanceOf(Taken.Done.class);
    return ((Taken.Done) taken).standing();
  }
}
