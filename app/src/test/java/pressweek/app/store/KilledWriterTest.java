package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.row.Entry;
import pressweek.app.store.row.Tick;

/**
 * A writer is killed amid its commits, again and again: what it had acknowledged is there. (That a
 * commit outlasts a loss of power too is SQLite's word for synchronous=FULL, not shown here.)
 */
@Tag("full")
class KilledWriterTest {
  private static final int KILLS = 50;
  private static final int MOST_LINES = 60;
  private static final int MOST_MS = 30;

  @TempDir Path folder;

  @Test
  void noAcknowledgedChangeIsLost() throws Exception {
    Path file = folder.resolve("week.db");
    Random random = new Random(2026);
    long week = 0;
    long ticks = 0;
    int amid = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      for (String line : acknowledgedUntilKilled(file, random)) {
        long step = Long.parseLong(line.substring(line.indexOf(' ') + 1));
        week = line.startsWith("week") ? step : week;
        ticks = line.startsWith("ticks") ? step : ticks;
      }
      SqliteFile.at(file).checkThoroughly();
      try (Store store = Store.open(file.toString())) {
        long version = store.deskStates().version();
        assertThat(version).as("kill %s", kill).isBetween(week, week + 1);
        amid += version > week ? 1 : 0;
        assertThat(store.deskStates().current().orElseThrow().what()).isEqualTo("step " + version);
        assertThat(standing(store, ticks)).isEqualTo(KilledWriter.ticks(ticks));
      }
    }
    try (Store store = Store.open(file.toString())) {
      assertThat(week).isGreaterThan(KILLS);
      everythingIsThere(store, store.deskStates().version());
    }
    assertThat(amid).as("kills between a commit and its line").isPositive();
  }

  private static List<Tick> standing(Store store, long step) throws StoreTrouble {
    List<String> keys = KilledWriter.ticks(step).stream().map(Tick::pull).toList();
    return keys.isEmpty() ? List.of() : List.copyOf(store.ticks().standing(keys).values());
  }

  /**
   * Each step in the history in its order, and its ticks all or none; none only where it was
   * killed.
   */
  private static void everythingIsThere(Store store, long steps) throws StoreTrouble {
    List<String> weeks =
        store.history().about("week", 1_000_000).stream().map(Entry::what).toList();
    assertThat(weeks).hasSize((int) steps);
    int without = 0;
    for (int step = 1; step <= steps; step++) {
      assertThat(weeks.get((int) steps - step)).isEqualTo("step " + step);
      List<Tick> standing = standing(store, step);
      assertThat(standing.size()).isIn(0, KilledWriter.TICKS);
      without += standing.isEmpty() ? 1 : 0;
    }
    assertThat(without).isLessThanOrEqualTo(KILLS);
  }

  /** The lines that came through, those among them that were written just before the end. */
  private static List<String> acknowledgedUntilKilled(Path file, Random random)
      throws IOException, InterruptedException {
    Process writer = start(file);
    List<String> lines = new ArrayList<>();
    try (BufferedReader out = writer.inputReader()) {
      int enough = 1 + random.nextInt(MOST_LINES);
      String line = out.readLine();
      while (line != null && lines.size() < enough) {
        lines.add(line);
        line = out.readLine();
      }
      boolean ended = writer.waitFor(random.nextInt(MOST_MS), TimeUnit.MILLISECONDS);
      assertThat(ended).as("the writer goes on until it is killed").isFalse();
      // By its handle, since Process closes the streams as well.
      writer.toHandle().destroyForcibly();
      while (line != null) {
        lines.add(line);
        line = out.readLine();
      }
    } finally {
      writer.destroyForcibly().waitFor();
    }
    assertThat(lines).isNotEmpty();
    return lines;
  }

  private static Process start(Path file) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return new ProcessBuilder(
            java,
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            KilledWriter.class.getName(),
            file.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }
}
