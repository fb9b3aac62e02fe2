package pressweek.app.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.SweepResult;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.files.PlanFile;
import pressweek.data.files.Scenario;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.data.stress.Estimate;
import pressweek.data.stress.LineChance;
import pressweek.data.stress.Stressed;
import pressweek.data.week.Week;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.stress.Stress;

/** Sweeps of the small plant in one process on SQLite. */
final class SweepTest {
  private static final Path SMALL = Path.of("../examples/quillback-small");
  private static final int NOW = 29_000_000;

  @TempDir private Path folder;
  @TempDir private Path out;

  private static SweepReading.Read read(SweepFile file, Path... folders) {
    return SweepReading.read(file, List.of(folders), Path.of("."), NOW);
  }

  private static SweepFile seeds(Long... seeds) {
    return new SweepFile(5, List.of(seeds), List.of(""), Replaying.NONE);
  }

  private Sweeping.Swept sweep(SweepReading.Read read) throws StoreTrouble, InterruptedException {
    Worker.Settings settings = new Worker.Settings("test", 2, Duration.ofSeconds(1));
    try (Store store = Store.open(out.resolve("sweep.db").toString());
        Worker worker = new Worker(store, settings)) {
      worker.start();
      return new Sweeping(store).sweep(read, progress -> {});
    }
  }

  private static Map<String, String> bodies(Sweeping.Swept swept) {
    Map<String, String> bodies = new TreeMap<>();
    swept.results().forEach((task, result) -> bodies.put(task, result.body()));
    return bodies;
  }

  private Path copy() throws IOException {
    Path copy = folder.resolve("copy");
    Files.createDirectories(copy);
    try (Stream<Path> files = Files.list(SMALL)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, copy.resolve(file.getFileName().toString()));
      }
    }
    return copy;
  }

  /** The small plant with an uncertainty of its own. */
  private Path copy(String uncertainty) throws IOException {
    Path copy = copy();
    Path plant = copy.resolve("plant.json");
    String text = Files.readString(plant).strip();
    Files.writeString(
        plant,
        text.substring(0, text.length() - 1) + ", \"uncertainty\": {" + uncertainty + "}}\n");
    return copy;
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
    Path copy = copy();
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

  private static SweepFile replayed(int replays, long seed) {
    return new SweepFile(5, List.of(1L, 2L), List.of(""), new Replaying(replays, seed));
  }

  @Test
  void replaysAreThoseOfStressOnTheSamePlan() throws Exception {
    Path rough = copy("\"cycle_spread_pct\": 90, \"breakdown_every_h\": 9");
    Sweeping.Swept swept = sweep(read(replayed(30, 7), rough));
    assertThat(swept.isWhole()).isTrue();
    Folder read = FolderReader.read(rough, Scenario.none());
    Problem problem = Week.build(read, NOW).problem().orElseThrow();
    for (Sweep.Case each : swept.sweep().cases()) {
      Settings settings = new Settings(0, 5, each.seed());
      Head head = new Head("by hand", "", 0, Map.of(), settings, List.of(), false);
      Plan plan = new Planner(problem).plan(head, Optional.empty(), Watcher.NONE);
      Stressed stressed =
          new Stress(read.plant().uncertainty(), new Stress.Asked(30, 7, 2))
              .of(plan, Optional.empty(), List.of());
      SweepFigures figures = SweepLists.figures(swept, each).orElseThrow();
      ReplayFigures replays = figures.replays().orElseThrow();
      assertThat(replays.count()).isEqualTo(30);
      assertIs(replays.onTimeLines(), stressed.totals().onTimeLines(), 5e-5);
      assertIs(replays.lateHours(), stressed.totals().lateHours(), 5e-5);
      assertIs(replays.cost(), stressed.totals().cost(), 0.5);
      assertThat(stressed.totals().onTimeLines().high())
          .isGreaterThan(stressed.totals().onTimeLines().low());
      JsonNode lines = figures.node().path("replays").path("lines");
      assertThat(lines).hasSize(stressed.lines().size());
      for (int i = 0; i < lines.size(); i++) {
        LineChance line = stressed.lines().get(i);
        assertThat(lines.get(i).path("line").asText()).isEqualTo(line.line());
        assertThat(lines.get(i).path("on_time").asDouble())
            .isCloseTo(line.onTime().share(), within(5e-5));
        assertThat(lines.get(i).path("low").asDouble())
            .isCloseTo(line.onTime().low(), within(5e-5));
        assertThat(lines.get(i).path("late_h").asDouble())
            .isCloseTo(line.lateHours(), within(5e-5));
      }
    }
  }

  private static void assertIs(Estimate found, Estimate expected, double within) {
    assertThat(found.mean()).isCloseTo(expected.mean(), within(within));
    assertThat(found.low()).isCloseTo(expected.low(), within(within));
    assertThat(found.high()).isCloseTo(expected.high(), within(within));
  }

  @Test
  void twoWorkersComeToWhatOneDoes() throws Exception {
    SweepReading.Read read =
        read(new SweepFile(5, List.of(1L, 2L, 3L, 4L), List.of(""), new Replaying(40, 3)), SMALL);
    Duration heartbeat = Duration.ofSeconds(1);
    Map<String, String> one;
    try (Store store = Store.open(out.resolve("one.db").toString());
        Worker worker = new Worker(store, new Worker.Settings("one", 1, heartbeat))) {
      worker.start();
      one = bodies(new Sweeping(store).sweep(read, progress -> {}));
    }
    try (Store store = Store.open(out.resolve("two.db").toString());
        Worker first = new Worker(store, new Worker.Settings("first", 1, heartbeat));
        Worker second = new Worker(store, new Worker.Settings("second", 2, heartbeat))) {
      first.start();
      second.start();
      assertThat(bodies(new Sweeping(store).sweep(read, progress -> {}))).isEqualTo(one);
    }
    assertThat(one.values()).allMatch(body -> body.contains("\"on_time_lines\""));
  }

  @Test
  void replaysAreAnotherTaskAndNoneIsTheTaskItWas() throws Exception {
    SweepTask plain = new SweepTask("a", 5, 1);
    assertThat(plain.text()).isEqualTo("a 5 1");
    assertThat(plain.key()).isEqualTo(SweepTask.sha256(PlanFile.SCHEMA + "\nplan\na\n5\n1"));
    SweepTask replayed = new SweepTask("a", 5, 1, "luck", new Replaying(30, 2));
    assertThat(SweepTask.of(replayed.text())).isEqualTo(replayed);
    assertThat(
            Stream.of(
                    plain,
                    replayed,
                    new SweepTask("a", 5, 1, "other", new Replaying(30, 2)),
                    new SweepTask("a", 5, 1, "luck", new Replaying(31, 2)),
                    new SweepTask("a", 5, 1, "luck", new Replaying(30, 3)))
                .map(SweepTask::key)
                .distinct())
        .hasSize(5);

    Path copy = copy("\"cycle_spread_pct\": 9, \"sure_pct\": 75");
    assertThat(read(seeds(1L), copy).tasks().keySet())
        .isEqualTo(read(seeds(1L), SMALL).tasks().keySet());
    assertThat(read(replayed(30, 1), copy).tasks().keySet())
        .doesNotContainAnyElementsOf(read(replayed(30, 1), SMALL).tasks().keySet());
  }

  @Test
  void listsHaveWhatReplaysComeToAndNothingWithoutThem() throws Exception {
    String columns =
        "fault,task,replays,expected_on_time,expected_on_time_low,expected_on_time_high,"
            + "expected_late_h,expected_late_low_h,expected_late_high_h,expected_cost,"
            + "expected_cost_low,expected_cost_high";
    Sweeping.Swept plain = sweep(read(seeds(1L), SMALL));
    List<String> without = SweepLists.csv(plain).lines().toList();
    assertThat(without.get(0)).endsWith(columns);
    assertThat(without.get(1)).endsWith(",,,,,,,,,,");
    assertThat(SweepLists.json(plain)).doesNotContain("replay");
    assertThat(SweepText.of(plain)).doesNotContain("replayed");
    Sweeping.Swept swept = sweep(read(replayed(30, 7), SMALL));
    assertThat(swept.progress().reused()).isZero();
    List<String> with = SweepLists.csv(swept).lines().toList();
    assertThat(with.get(1)).matches(".*,[0-9a-f]{64},30(,-?\\d+(\\.\\d+)?){9}");
    assertThat(SweepLists.json(swept))
        .contains("\"replays\" : 30")
        .contains("\"replay_seed\" : 7")
        .contains("\"line\" : \"706/1\"");
    String shown = SweepText.of(swept);
    assertThat(shown)
        .contains("Each plan replayed 30 times under uncertain times (seed 7): estimates")
        .containsPattern(
            "quillback-small +\\d+\\.\\d \u00b1\\d\\.\\d +[\\d.]+ \u00b1[\\d.]+ +[\\d.,]+ \u00b1");
    assertThat(shown)
        .containsPattern("Most lines on time: \\S+ \\S+ of quillback-small, seed [12].");
    assertThat(shown.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void luckThatIsNotThereIsAFault() throws Exception {
    SweepReading.Read read = read(replayed(30, 7), SMALL);
    Map<String, String> texts = new TreeMap<>(read.texts());
    texts.values().removeIf(text -> text.startsWith("{\"cycle_pct\""));
    assertThat(texts).hasSize(1);
    Sweeping.Swept swept = sweep(new SweepReading.Read(read.sweep(), read.tasks(), texts));
    assertThat(swept.progress().faults()).isEqualTo(2);
  }

  @Test
  void withoutMoneyTheTableFitsToo() throws Exception {
    Path plain = folder.resolve("a-plant-with-a-rather-long-name-of-its-folder-and-without-rates");
    Files.createDirectories(plain);
    Files.writeString(
        plain.resolve("orders.csv"),
        "order,item,quantity,due,mold,resin,colour\n1,K1,90000,2025-02-20,M1,PP,BLK\n2,K1,70000,2025-02-19,M1,PP,RED\n");
    Files.writeString(
        plain.resolve("molds.csv"),
        "mold,makes,live_cavities,cycle_s,runs_on,hand_load\nM1,K1,2,40,P1,no\n");
    Files.writeString(
        plain.resolve("presses.csv"), "press,orientation,clamp_kn\nP1,horizontal,1000\n");
    Sweeping.Swept swept = sweep(read(replayed(20, 1), plain));
    assertThat(swept.isWhole()).as(SweepText.of(swept)).isTrue();
    assertThat(SweepText.of(swept))
        .contains("Change time least")
        .containsPattern(" \\d+\\.\\d h +\\d+\\.\\d h +\\d+\\.\\d h\\n")
        .doesNotContain("avoidable cost");
    assertThat(SweepText.of(swept).lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
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
