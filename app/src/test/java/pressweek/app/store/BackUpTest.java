package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static pressweek.app.store.Given.done;
import static pressweek.app.store.Given.state;
import static pressweek.app.store.Given.tick;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.row.Tick;

class BackUpTest {
  @TempDir Path folder;
  private Path file;
  private Path copy;

  @BeforeEach
  void name() {
    file = folder.resolve("week.db");
    copy = folder.resolve("copies/monday.db");
  }

  @Test
  void aCopyMadeWhileOthersWriteIsWhole() throws Exception {
    AtomicBoolean enough = new AtomicBoolean();
    CountDownLatch started = new CountDownLatch(20);
    ExecutorService writer = Executors.newSingleThreadExecutor();
    try (Store store = Store.open(file.toString())) {
      Future<Integer> written = writer.submit(() -> writePairs(store, enough, started));
      started.await();
      try {
        for (int i = 0; i < 5; i++) {
          store.backUp(folder.resolve("copy" + i));
        }
      } finally {
        enough.set(true);
      }
      assertThat(written.get()).isGreaterThan(20);
    } finally {
      writer.shutdownNow();
    }
    int before = 0;
    for (int i = 0; i < 5; i++) {
      int pieces = pairsIn(folder.resolve("copy" + i));
      assertThat(pieces).isGreaterThanOrEqualTo(Math.max(19, before));
      before = pieces;
    }
    assertThat(filesEndingWith(".part")).isEmpty();
  }

  private static int writePairs(Store store, AtomicBoolean enough, CountDownLatch started)
      throws StoreTrouble {
    int pairs = 0;
    for (; !enough.get(); pairs++) {
      store.ticks().add(List.of(tick(2 * pairs, "A", pairs), tick(2 * pairs + 1, "B", pairs)));
      started.countDown();
    }
    return pairs;
  }

  /** Pieces on the last pair of ticks: in a whole copy both of it are there, with their history. */
  private static int pairsIn(Path copy) throws StoreTrouble {
    try (Store store = Store.open(copy.toString())) {
      Map<String, Tick> standing = store.ticks().standing(List.of("A", "B"));
      int pieces = standing.get("A").pieces();
      assertThat(standing.get("B").pieces()).isEqualTo(pieces);
      assertThat(store.history().latest(1_000_000)).hasSize(2 * (pieces + 1));
      return pieces;
    }
  }

  @Test
  void aFileThatIsThereIsNotOverwritten() throws Exception {
    try (Store store = Store.open(file.toString())) {
      store.backUp(copy);
      byte[] first = Files.readAllBytes(copy);
      done(store.deskStates().put(state("solved"), 0));
      StoreTrouble trouble = catchThrowableOfType(StoreTrouble.class, () -> store.backUp(copy));
      assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.NOT_DONE);
      assertThat(trouble).hasMessageContaining("monday.db exists already");
      assertThat(Files.readAllBytes(copy)).isEqualTo(first);
    }
  }

  @Test
  void aRestoredStoreIsAsItWas() throws Exception {
    backUpOf("solved");
    try (Store store = Store.open(file.toString())) {
      done(store.deskStates().put(state("moved"), 1));
    }
    Path aside = Store.restore(copy, file).orElseThrow();
    assertThat(whatLiesIn(file)).contains("solved");
    assertThat(whatLiesIn(aside)).contains("moved");
    assertThat(copy).exists();
    assertThat(Store.restore(copy, file)).contains(folder.resolve("week.db.replaced-2"));
  }

  @Test
  void aDamagedStoreIsReplacedAndKept() throws Exception {
    backUpOf("solved");
    damage(file);
    byte[] damaged = Files.readAllBytes(file);
    Path aside = Store.restore(copy, file).orElseThrow();
    assertThat(Files.readAllBytes(aside)).isEqualTo(damaged);
    assertThat(whatLiesIn(file)).contains("solved");
  }

  @Test
  void whereThereWasNoStoreNothingIsKept() throws Exception {
    backUpOf("solved");
    Path elsewhere = folder.resolve("new/folder/week.db");
    assertThat(Store.restore(copy, elsewhere)).isEmpty();
    assertThat(whatLiesIn(elsewhere)).contains("solved");
  }

  @Test
  void aDamagedBackUpReplacesNothing() throws Exception {
    backUpOf("solved");
    damage(copy);
    StoreTrouble trouble =
        catchThrowableOfType(StoreTrouble.class, () -> Store.restore(copy, file));
    assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.DAMAGED);
    assertThat(trouble).hasMessageContaining("monday.db");
    assertThat(whatLiesIn(file)).contains("solved");
    assertThat(filesEndingWith(".replaced")).isEmpty();
  }

  @Test
  void anotherKindOfFileReplacesNothing() throws Exception {
    backUpOf("solved");
    Path text = Files.writeString(folder.resolve("notes.txt"), "Monday");
    StoreTrouble trouble =
        catchThrowableOfType(StoreTrouble.class, () -> Store.restore(text, file));
    assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.NOT_A_STORE);
    assertThat(whatLiesIn(file)).contains("solved");
  }

  @Test
  void aStoreInUseIsNotReplaced() throws Exception {
    backUpOf("solved");
    try (Store store = Store.open(file.toString())) {
      done(store.deskStates().put(state("moved"), 1));
      StoreTrouble trouble =
          catchThrowableOfType(StoreTrouble.class, () -> Store.restore(copy, file));
      assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.LOCKED);
      done(store.deskStates().put(state("held"), 2));
    }
    assertThat(whatLiesIn(file)).contains("held");
    assertThat(filesEndingWith(".part")).isEmpty();
  }

  private void backUpOf(String what) throws StoreTrouble {
    try (Store store = Store.open(file.toString())) {
      done(store.deskStates().put(state(what), 0));
      store.backUp(copy);
    }
  }

  private static Optional<String> whatLiesIn(Path store) throws StoreTrouble {
    try (Store open = Store.open(store.toString())) {
      return open.deskStates().current().map(state -> state.what());
    }
  }

  /** Every page but the first loses its beginning. */
  private static void damage(Path file) throws IOException {
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
      for (long page = 4_096; page < bytes.length(); page += 4_096) {
        bytes.seek(page);
        bytes.write(new byte[] {9, 9, 9, 9, 9, 9, 9, 9, 9, 9});
      }
    }
  }

  private List<Path> filesEndingWith(String end) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(path -> path.toString().endsWith(end)).toList();
    }
  }
}
