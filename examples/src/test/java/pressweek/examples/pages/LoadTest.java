package pressweek.examples.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.StoreTrouble;

/** Fifty readers and five editors on the demo plant's week: nothing fails, no change is lost. */
class LoadTest {
  private static final System.Logger LOG = System.getLogger(LoadTest.class.getName());
  private static final Instant NOW = Instant.parse("2026-11-30T05:00:00Z");

  @Test
  @Tag("full")
  void nothingFailsAndNoChangeIsLost(@TempDir Path dir)
      throws IOException, StoreTrouble, InterruptedException {
    try (Served served = new Served(PagesSpeedRun.DEMO, dir.resolve("store.db"), NOW, 20)) {
      long version = served.desk.standing().orElseThrow().version();
      Load.Came came = Load.of(served.home(), 50, 5, Duration.ofSeconds(30));
      assertThat(came.faults()).isEmpty();
      assertThat(came.reads()).hasSizeGreaterThan(200);
      assertThat(came.done()).isPositive();
      assertThat(served.desk.standing().orElseThrow().version())
          .as("every change that was acknowledged, and no other")
          .isEqualTo(version + came.done());
      assertThat(served.desk.standing().orElseThrow().findings()).isEmpty();
      LOG.log(
          System.Logger.Level.INFO,
          "{0} reads, half within {1} ms, 95 % within {2} ms; {3}",
          came.reads().size(),
          came.percentile(50),
          came.percentile(95),
          came.done() + " changes, " + came.stale() + " told that another was first");
    }
  }
}
