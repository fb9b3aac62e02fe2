package pressweek.app.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pressweek.app.sweep.SmallSweep.NOW;
import static pressweek.app.sweep.SmallSweep.SMALL;
import static pressweek.app.sweep.SmallSweep.bodies;
import static pressweek.app.sweep.SmallSweep.copy;
import static pressweek.app.sweep.SmallSweep.read;

import com.fasterxml.jackson.databind.JsonNode;
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

/** Plans of a sweep that are replayed under uncertain times. */
final class SweepReplaysTest {
  @TempDir private Path folder;
  @TempDir private Path out;

  private Sweeping.Swept sweep(SweepReading.Read read) throws StoreTrouble, InterruptedException {
    return SmallSweep.sweep(out, read);
  }

  private static SweepFile replayed(int replays, long seed) {
    return new SweepFile(5, List.of(1L, 2L), List.of(""), new Replaying(replays, seed));
  }

  @Test
  void replaysAreThoseOfStressOnTheSamePlan() throws Exception {
    Path rough = copy(folder, "\"cycle_spread_pct\": 90, \"breakdown_every_h\": 9");
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

    Path copy = copy(folder, "\"cycle_spread_pct\": 9, \"sure_pct\": 75");
    assertThat(
            read(new SweepFile(5, List.of(1L), List.of(""), Replaying.NONE), copy).tasks().keySet())
        .isEqualTo(
            read(new SweepFile(5, List.of(1L), List.of(""), Replaying.NONE), SMALL)
                .tasks()
                .keySet());
    assertThat(read(replayed(30, 1), copy).tasks().keySet())
        .doesNotContainAnyElementsOf(read(replayed(30, 1), SMALL).tasks().keySet());
  }

  @Test
  void listsHaveWhatReplaysComeToAndNothingWithoutThem() throws Exception {
    String columns =
        "fault,task,replays,expected_on_time,expected_on_time_low,expected_on_time_high,"
            + "expected_late_h,expected_late_low_h,expected_late_high_h,expected_cost,"
            + "expected_cost_low,expected_cost_high";
    Sweeping.Swept plain =
        sweep(read(new SweepFile(5, List.of(1L), List.of(""), Replaying.NONE), SMALL));
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
}
