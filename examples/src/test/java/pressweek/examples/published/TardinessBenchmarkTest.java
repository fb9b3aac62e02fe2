package pressweek.examples.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.examples.published.TardinessBenchmark.Outcome;

class TardinessBenchmarkTest {
  @TempDir private Path folder;
  private final List<String> runs = new ArrayList<>();

  @BeforeEach
  void values() throws IOException {
    Files.writeString(
        folder.resolve("best_known.csv"),
        """
        instance,tau,literature_recalled,match
        1,0.3,0,yes
        3,0.3,50,no
        41,0.6,200,yes
        43,0.6,400,yes
        """);
  }

  private TardinessBenchmark benchmark() throws IOException {
    return new TardinessBenchmark(
        TardinessBenchmark.values(folder),
        folder.resolve("rows.csv"),
        folder.resolve("RESULTS.md"));
  }

  /** A made-up planner: a twentieth above the best known value, ATCS half as much above. */
  private Outcome found(PublishedValue known, int seconds) throws IOException {
    if (runs.size() == 3) {
      throw new IOException("broken off");
    }
    runs.add(known.name() + "/" + seconds);
    return new Outcome(known.value() * 1.05, known.value() * 1.5);
  }

  @Test
  void aBenchmarkThatWasBrokenOffRunsOnlyTheRest() throws IOException {
    assertThatThrownBy(() -> benchmark().run(List.of(1), this::found)).hasMessage("broken off");
    assertThat(runs).containsExactly("1/1", "3/1", "41/1");
    runs.clear();
    benchmark().run(List.of(1), this::found);
    assertThat(runs).containsExactly("43/1");
    runs.clear();
    benchmark().run(List.of(1), this::found);
    assertThat(runs).isEmpty();
  }

  @Test
  void gapsAreMeansOfPercentsButSumsWhereValuesAreNearNothing() throws IOException {
    assertThatThrownBy(() -> benchmark().run(List.of(1), this::found)).hasMessage("broken off");
    runs.clear();
    benchmark().run(List.of(1), this::found);
    String page = Files.readString(folder.resolve("RESULTS.md"));
    assertThat(page)
        .startsWith("# " + TardinessPart.HEADING + "\n")
        .contains("| 41-80 | 2 of 2 | 1 | 0 | 5.00 % | 50.0 % |")
        .contains("| 1-40 | 2 of 2 | 1 | 53 | 50 | 3 | 75 |")
        .contains("| 3 | 50 | no | 53 |")
        .contains("| 43 | 400 | yes | 420 |")
        .contains("![Mean gap over seconds](tardiness.svg)");
    assertThat(folder.resolve("tardiness.svg")).content().contains("cases 41-80");
  }
}
