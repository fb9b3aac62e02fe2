package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pressweek.app.cli.RootCommand;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;

/**
 * The plan of the small plant is the one that its README works out by hand; {@code -Dgolden=update}
 * rewrites the expected lists.
 */
final class SmallPlantGoldenTest {
  private static final Path SMALL = Path.of("quillback-small");
  private static final int UNPLACED = 1;

  @TempDir private Path out;

  @ParameterizedTest
  @ValueSource(
      strings = {"schedule.csv", "pulls.csv", "shortages.csv", "changes.csv", "unplaced.csv"})
  void listsAreAsExpected(String name) throws IOException {
    plan(SMALL, "300");
    Path expected = SMALL.resolve("expected").resolve(name);
    String made = Files.readString(out.resolve(name));
    if ("update".equals(System.getProperty("golden"))) {
      Files.createDirectories(SMALL.resolve("expected"));
      Files.writeString(expected, made);
    }
    assertThat(made.replace("\r\n", "\n"))
        .isEqualTo(Files.readString(expected).replace("\r\n", "\n"));
  }

  @Test
  void chargesAreThoseWorkedOutByHand() throws IOException {
    plan(SMALL, "300");
    Plan plan = PlanFile.read(out.resolve("plan.json")).plan().orElseThrow();
    assertThat(plan.figures().costByRule())
        .containsEntry(Rule.LATE, 14_416_666L)
        .containsEntry(Rule.CHANGE, 18_000_000L)
        .containsEntry(Rule.PURGE, 298_600L)
        .containsEntry(Rule.START_UP, 498_500L)
        .hasSize(4);
    assertThat(plan.figures().avoidableCost()).isEqualTo(33_213_766L);
  }

  @Test
  void auditFindsNothing() {
    plan(SMALL, "300");
    String file = out.resolve("plan.json").toString();
    assertThat(RootCommand.run("audit", SMALL.toString(), file)).isZero();
  }

  @Test
  void threeFilesGiveAPlanThatSaysWhatWasNotChecked() throws IOException {
    assertThat(
            RootCommand.run(
                "plan",
                "three-files",
                "--out",
                out.toString(),
                "--steps",
                "200",
                "--now",
                "2026-11-30T06:00Z"))
        .isLessThan(2);
    Plan plan = PlanFile.read(out.resolve("plan.json")).plan().orElseThrow();
    assertThat(plan.runs()).isNotEmpty();
    assertThat(plan.problem().notChecked()).isNotEmpty();
    assertThat(Files.readString(out.resolve("index.html"))).contains("Not checked this week");
  }

  @Test
  void aPlanTakesTheNextNumberAndNamesTheOneItReplaces() throws IOException {
    plan(SMALL, "50");
    plan(SMALL, "50");
    Plan plan = PlanFile.read(out.resolve("plan.json")).plan().orElseThrow();
    assertThat(plan.head().number()).isEqualTo("2026-W49/2");
    assertThat(plan.head().replaces()).isEqualTo("2026-W49/1");
  }

  private void plan(Path folder, String steps) {
    int code =
        RootCommand.run("plan", folder.toString(), "--out", out.toString(), "--steps", steps);
    assertThat(code).isEqualTo(UNPLACED);
  }
}
