package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static pressweek.app.store.Given.ANNA;
import static pressweek.app.store.Given.done;
import static pressweek.app.store.Given.state;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.row.Body;
import pressweek.app.store.row.GivenPlan;
import pressweek.app.store.row.NewState;

class SqliteTroubleTest {
  private static final int PLANS = 30;

  @TempDir Path folder;

  @Test
  void aTextFileIsNoStore() throws Exception {
    Path file = folder.resolve("notes.txt");
    Files.writeString(file, "Monday: H4 is down until ten");
    StoreTrouble trouble = troubleOf(file);
    assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.NOT_A_STORE);
    assertThat(trouble)
        .hasMessageContaining("notes.txt is not a store of Pressweek")
        .hasMessageContaining("Name another one");
    assertThat(Files.readString(file)).isEqualTo("Monday: H4 is down until ten");
  }

  @Test
  void aFolderIsNoStore() {
    assertThat(troubleOf(folder)).hasMessageContaining("is not a file");
  }

  @Test
  void anotherKindOfDatabaseIsRefused() {
    StoreTrouble trouble =
        catchThrowableOfType(
            StoreTrouble.class, () -> Store.open("jdbc:other://host/week?password=geheim"));
    assertThat(trouble).hasMessageContaining("jdbc:postgresql:").hasMessageNotContaining("geheim");
  }

  @Test
  void overwrittenPagesAreNoticedAndTheWayBackIsTold() throws Exception {
    Path file = filled("week.db");
    byte[] before = Files.readAllBytes(file);
    overwrite(file, before.length / 2, 3 * 4_096, new Random(1));
    StoreTrouble trouble = troubleOf(file);
    assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.DAMAGED);
    assertThat(trouble)
        .hasMessageContaining("week.db is damaged")
        .hasMessageContaining("restore the last back-up");
  }

  @Test
  void aBodyThatChangedOnTheDiskIsNotGivenBack() throws Exception {
    Path file = filled("week.db");
    try (Connection connection = SqliteFile.at(file).connect();
        Statement statement = connection.createStatement()) {
      statement.execute("UPDATE given_plan SET body = x'00' WHERE number = 'W/7'");
    }
    try (Store store = Store.open(file.toString())) {
      StoreTrouble trouble =
          catchThrowableOfType(StoreTrouble.class, () -> store.plans().byNumber("W/7"));
      assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.DAMAGED);
      assertThat(trouble).hasMessageContaining("plan W/7 is not as it was written");
      assertThat(store.plans().byNumber("W/8")).isPresent();
    }
  }

  /**
   * Wherever the bytes are overwritten: a body is the one that was written, or there is trouble.
   */
  @Test
  @Tag("full")
  void noDamageGoesUnnoticedInABody() throws Exception {
    byte[] whole = Files.readAllBytes(filled("week.db"));
    int noticed = 0;
    for (int seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      Path file = folder.resolve("damaged" + seed + ".db");
      Files.write(file, whole);
      overwrite(file, random.nextInt(whole.length - 200), 1 + random.nextInt(200), random);
      noticed += readsRightOrNotAtAll(file) ? 0 : 1;
    }
    assertThat(noticed).isBetween(30, 60);
  }

  private static boolean readsRightOrNotAtAll(Path file) {
    try (Store store = Store.open(file.toString())) {
      for (int i = 0; i < PLANS; i++) {
        assertThat(store.plans().byNumber("W/" + i).orElseThrow().body()).isEqualTo(body(i));
      }
      return true;
    } catch (StoreTrouble trouble) {
      assertThat(trouble.kind())
          .isIn(StoreTrouble.Kind.DAMAGED, StoreTrouble.Kind.NOT_A_STORE, StoreTrouble.Kind.NEWER);
      return false;
    }
  }

  @Test
  void aFullDiskLosesNothingThatWasAcknowledged() throws Exception {
    String target = folder.resolve("week.db").toString();
    long acknowledged = 0;
    try (Store store = Store.open(target, new SqliteSettings(120, Duration.ofSeconds(1)))) {
      StoreTrouble full = null;
      while (full == null && acknowledged < 1_000) {
        try {
          done(store.deskStates().put(large(acknowledged), acknowledged));
          acknowledged++;
        } catch (StoreTrouble e) {
          full = e;
        }
      }
      assertThat(acknowledged).isBetween(10L, 100L);
      assertThat(full.kind()).isEqualTo(StoreTrouble.Kind.FULL);
      assertThat(full)
          .hasMessageContaining("is full")
          .hasMessageContaining("the last change was not taken");
      assertThat(store.deskStates().current().orElseThrow().body())
          .isEqualTo(large(acknowledged - 1).body());
      assertThat(store.history().latest(1_000)).hasSize((int) acknowledged);
    }
    try (Store roomy = Store.open(target)) {
      assertThat(roomy.deskStates().version()).isEqualTo(acknowledged);
      done(roomy.deskStates().put(large(acknowledged), acknowledged));
      for (long i = acknowledged; i > 0; i--) {
        long version = roomy.deskStates().version();
        assertThat(done(roomy.deskStates().undo(version, ANNA)).body())
            .isEqualTo(large(i - 1).body());
      }
    }
  }

  @Test
  void aLockOfAnotherProgramIsNamed() throws Exception {
    Path file = folder.resolve("week.db");
    SqliteSettings hasty = new SqliteSettings(Integer.MAX_VALUE, Duration.ofMillis(50));
    try (Store store = Store.open(file.toString(), hasty)) {
      try (Connection other = SqliteFile.at(file).connect();
          Statement statement = other.createStatement()) {
        statement.execute("BEGIN IMMEDIATE");
        StoreTrouble trouble =
            catchThrowableOfType(
                StoreTrouble.class, () -> store.deskStates().put(state("solved"), 0));
        assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.LOCKED);
        assertThat(trouble).hasMessageContaining("locked by another program");
        assertThat(store.deskStates().current()).isEmpty();
      }
      done(store.deskStates().put(state("solved"), 0));
    }
  }

  private Path filled(String name) throws StoreTrouble {
    Path file = folder.resolve(name);
    try (Store store = Store.open(file.toString())) {
      for (int i = 0; i < PLANS; i++) {
        done(store.plans().give(new GivenPlan("W/" + i, body(i), ANNA)));
      }
    }
    return file;
  }

  private static Body body(int plan) {
    byte[] bytes = new byte[9_000];
    new Random(plan).nextBytes(bytes);
    return Body.of(bytes);
  }

  private static NewState large(long step) {
    return new NewState("2026-W49/1", body((int) step), "step " + step, ANNA);
  }

  private static void overwrite(Path file, int from, int length, Random random) throws IOException {
    byte[] noise = new byte[length];
    random.nextBytes(noise);
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
      bytes.seek(from);
      bytes.write(noise, 0, Math.min(length, (int) (bytes.length() - from)));
    }
  }

  private static StoreTrouble troubleOf(Path file) {
    return catchThrowableOfType(StoreTrouble.class, () -> Store.open(file.toString()));
  }
}
