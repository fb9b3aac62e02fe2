package pressweek.app.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.app.sweep.SmallSweep.NOW;
import static pressweek.app.sweep.SmallSweep.SMALL;
import static pressweek.app.sweep.SmallSweep.bodies;
import static pressweek.app.sweep.SmallSweep.copy;
import static pressweek.app.sweep.SmallSweep.read;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.SweepResult;

/** Sweeps of the small plant in one process on SQLite. */
final class SweepTest {

  @TempDir private Path folder;
  @TempDir private Path out;

  private static SweepFile seeds(Long... seeds) {
    return new SweepFile(5, List.of(seeds), List.of(""), Replaying.NONE);
  }

  private Sweeping.Swept sweep(SweepReading.Read read) throws StoreTrouble, InterruptedException {
    return SmallSweep.sweep(out, read);
  }

  @Test
  void everySeedHasItsPlan() throws Exception {
    Sweeping.Swept swept = sweep(read(seeds(1L, 2L, 3L), SMALL));
    assertThat(swept.isWhole()).isTrue();
    assertThat(swept.isBroken()).isFalse();
    assertThat(swept.results()).hasSize(3);
    assertThat(swept.progress().done()).isEqualTo(3);
    for (Sweep.Case each : swept.sweep().cases()) {
      SweepFigures figures = SweepLists.figures(swept, each).orElseThrow();
      assertThat(figures.number("unplaced_lines")).isEqualTo(4);
      assertThat(figures.findings()).isZero();
      assertThat(figures.avoidableCost()).isPositive();
    }
  }

  @Test
  void theSameSweepAgainComputesNothingAndSaysTheSame() throws Exception {
    Sweeping.Swept first = sweep(read(seeds(1L, 2L), SMALL));
    Sweeping.Swept second = sweep(read(seeds(2L, 1L, 3L), SMALL));
    assertThat(second.progress().reused()).isEqualTo(2);
    assertThat(second.progress().done()).isEqualTo(1);
    assertThat(bodies(second)).containsAllEntriesOf(bodies(first));
    Sweeping.Swept third = sweep(read(seeds(1L, 2L), SMALL));
    assertThat(third.progress().done()).isZero();
    assertThat(SweepLists.csv(third)).isEqualTo(SweepLists.csv(first));
  }

  @Test
  void anotherStoreComesToTheSameFigures() throws Exception {
    Sweeping.Swept first = sweep(read(seeds(1L, 2L), SMALL));
    Files.delete(out.resolve("sweep.db"));
    assertThat(bodies(sweep(read(seeds(1L, 2L), SMALL)))).isEqualTo(bodies(first));
  }

  @Test
  void aTaskIsKnownByAllThatItsResultDependsOn() throws Exception {
    Path copy = copy(folder);
    assertThat(read(seeds(1L), copy).tasks().keySet())
        .isEqualTo(read(seeds(1L), SMALL).tasks().keySet());
    Path orders = copy.resolve("orders.csv");
    Files.writeString(
        orders,
        Files.readString(orders)
            .replace(
                "704,1,Hobbin Winches,ST50/M8-T/PP-BLK/ZN,480",
                "704,1,Hobbin Winches,ST50/M8-T/PP-BLK/ZN,482"));
    assertThat(read(seeds(1L), copy).tasks().keySet())
        .doesNotContainAnyElementsOf(read(seeds(1L), SMALL).tasks().keySet());
    SweepTask task = new SweepTask("a", 5, 1);
    assertThat(task.key()).hasSize(64).isEqualTo(SweepTask.of(task.text()).key());
    assertThat(
            Stream.of(
                    task,
                    new SweepTask("b", 5, 1),
                    new SweepTask("a", 6, 1),
                    new SweepTask("a", 5, 2))
                .map(SweepTask::key)
                .distinct())
        .hasSize(4);
  }

  @Test
  void aBadFolderIsSaidAndTheOthersGoOn() throws Exception {
    Path bad = folder.resolve("bad");
    Files.createDirectories(bad);
    Files.writeString(bad.resolve("orders.csv"), "order,item\n1,2\n");
    Sweeping.Swept swept = sweep(read(seeds(1L, 2L), bad, SMALL, folder.resolve("none")));
    assertThat(swept.isWhole()).isFalse();
    assertThat(swept.isBroken()).isFalse();
    assertThat(swept.results()).hasSize(2);
    assertThat(SweepText.of(swept))
        .contains("6 plans of 5 steps each: 2 computed, 0 were known, 4 failed, 0 not done")
        .containsSubsequence("Without figures", "of a plant (2 plans)", "unplaced", "median")
        .contains("bad: orders.csv: column \"quantity\" missing")
        .contains("of a plant (2 plans)");
    assertThat(SweepText.of(swept).lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(SweepLists.csv(swept).lines()).hasSize(7);
  }

  @Test
  void scenariosAreOtherPlansAndABadOneIsSaid() throws Exception {
    Path bad = Files.writeString(folder.resolve("bad.json"), "{\"set\": 1}");
    SweepFile file =
        new SweepFile(
            5,
            List.of(1L),
            List.of("", "saturday.json", bad.toString(), "none.json"),
            Replaying.NONE);
    SweepReading.Read read =
        SweepReading.read(file, List.of(SMALL), SMALL.resolve("scenarios"), NOW);
    assertThat(read.tasks()).hasSize(2);
    assertThat(read.texts()).hasSize(2);
    Sweeping.Swept swept = sweep(read);
    assertThat(swept.results()).hasSize(2);
    assertThat(SweepText.of(swept))
        .contains("quillback-small saturday")
        .contains("quillback-small none: ")
        .contains("bad.json");
  }

  @Test
  void aProblemThatIsNotThereIsAFaultWhichIsTriedAgain() throws Exception {
    SweepReading.Read read = read(seeds(1L), SMALL);
    SweepReading.Read broken = new SweepReading.Read(read.sweep(), read.tasks(), Map.of());
    Sweeping.Swept swept = sweep(broken);
    assertThat(swept.isBroken()).isTrue();
    assertThat(swept.progress().faults()).isEqualTo(1);
    try (Store store = Store.open(out.resolve("sweep.db").toString())) {
      SweepResult fault = store.sweeps().results(read.tasks().keySet()).values().iterator().next();
      assertThat(fault.fault()).contains("its problem");
    }
    Files.delete(out.resolve("sweep.db"));
    assertThat(sweep(read).isWhole()).isTrue();
  }

  @Test
  void whatIsStoppedGoesOnWithTheSameCommand() throws Exception {
    SweepReading.Read read = read(seeds(1L, 2L, 3L), SMALL);
    try (Store store = Store.open(out.resolve("sweep.db").toString())) {
      Sweeping sweeping = new Sweeping(store);
      sweeping.stop();
      Sweeping.Swept none = sweeping.sweep(read, progress -> {});
      assertThat(none.progress().left()).isEqualTo(3);
      assertThat(SweepText.of(none)).contains("3 not done");
    }
    assertThat(sweep(read).isWhole()).isTrue();
  }
}
