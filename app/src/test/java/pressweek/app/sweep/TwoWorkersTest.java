package pressweek.app.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.Main;
import pressweek.app.store.PostgresServer;
import pressweek.app.store.Store;
import pressweek.app.store.row.SweepResult;

/**
 * Two workers, each a program of its own, share a database of PostgreSQL; one is killed amid a
 * sweep. All results are there, none twice, and the same that one process on SQLite comes to.
 */
@Tag("full")
final class TwoWorkersTest {
  private static final Path SMALL = Path.of("../examples/quillback-small");
  private static final int NOW = 29_000_000;
  private static final int TASKS = 200;
  private static final int KILLED_AFTER = 60;

  @TempDir private Path folder;

  private static SweepReading.Read read() {
    List<Long> seeds = LongStream.rangeClosed(1, TASKS).boxed().toList();
    return SweepReading.read(
        new SweepFile(5, seeds, List.of(""), new Replaying(20, 1)),
        List.of(SMALL),
        Path.of("."),
        NOW);
  }

  @Test
  @Timeout(value = 4, unit = TimeUnit.MINUTES)
  void whatAKilledWorkerHadBegunIsDoneByTheOther() throws Exception {
    try (PostgresServer server = PostgresServer.start()) {
      String url = server.newDatabase();
      Map<String, SweepResult> shared = sweptByTwo(url);
      Set<String> by = shared.values().stream().map(SweepResult::by).collect(Collectors.toSet());
      assertThat(by).as("both took part").hasSize(2);
      assertThat(shared).hasSize(TASKS);
      assertThat(count(url, "SELECT count(*) FROM sweep_result")).isEqualTo(TASKS);
      assertThat(count(url, "SELECT count(*) FROM sweep_result WHERE fault <> ''")).isZero();
      assertThat(bodies(shared)).isEqualTo(bodies(sweptAlone()));
    }
  }

  /** Two workers are started, and the first is killed when so many tasks are done. */
  private Map<String, SweepResult> sweptByTwo(String url) throws Exception {
    SweepReading.Read read = read();
    Process first;
    Process second;
    try (Store store = Store.open(url)) {
      first = worker(url);
      second = worker(url);
      try {
        AtomicBoolean killed = new AtomicBoolean();
        Sweeping.Swept swept =
            new Sweeping(store)
                .sweep(
                    read,
                    progress -> {
                      if (progress.done() >= KILLED_AFTER && !killed.getAndSet(true)) {
                        assertThat(first.isAlive()).isTrue();
                        assertThat(progress.left()).as("killed amid the sweep").isPositive();
                        first.destroyForcibly();
                      }
                    });
        assertThat(killed).isTrue();
        assertThat(first.waitFor()).isNotZero();
        assertThat(second.isAlive()).isTrue();
        assertThat(swept.isWhole()).isTrue();
        return swept.results();
      } finally {
        first.destroyForcibly().waitFor();
        second.destroyForcibly().waitFor();
      }
    }
  }

  private Map<String, SweepResult> sweptAlone() throws Exception {
    Worker.Settings settings = new Worker.Settings("alone", 1, Duration.ofSeconds(1));
    try (Store store = Store.open(folder.resolve("sweep.db").toString());
        Worker worker = new Worker(store, settings)) {
      worker.start();
      return new Sweeping(store).sweep(read(), progress -> {}).results();
    }
  }

  private static Map<String, String> bodies(Map<String, SweepResult> results) {
    Map<String, String> bodies = new TreeMap<>();
    results.forEach((task, result) -> bodies.put(task, result.body()));
    return bodies;
  }

  private static int count(String url, String sql) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url);
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      assertThat(found.next()).isTrue();
      return found.getInt(1);
    }
  }

  private static Process worker(String url) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return new ProcessBuilder(
            java,
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName(),
            "work",
            "--store",
            url,
            "--heartbeat",
            "1")
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
