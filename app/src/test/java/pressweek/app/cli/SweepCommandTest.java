package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code sweep} as it is typed. */
final class SweepCommandTest {
  private static final Path SMALL = Path.of("../examples/quillback-small");
  private static final String NOW = "2026-11-30T05:00Z";

  @TempDir private Path folder;
  @TempDir private Path plant;

  /** The small plant, whose presses break down all the time. */
  @BeforeEach
  void copy() throws IOException {
    try (Stream<Path> files = Files.list(SMALL)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, plant.resolve(file.getFileName().toString()));
      }
    }
    Path file = plant.resolve("plant.json");
    String text = Files.readString(file).strip();
    String rough = "\"uncertainty\": {\"cycle_spread_pct\": 90, \"breakdown_every_h\": 9}";
    Files.writeString(file, text.substring(0, text.length() - 1) + ", " + rough + "}\n");
  }

  private Ran sweep(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("sweep.json"), text);
    return Ran.pressweek(
        "sweep",
        plant.toString(),
        file.toString(),
        "--out",
        folder.resolve("out").toString(),
        "--now",
        NOW,
        "--threads",
        "2");
  }

  /** The chances of lines by both ways, in percent with one decimal. */
  @Test
  void aReplayedPlanIsAsSureAsStressSays() throws IOException {
    Ran ran = sweep("{\"steps\": 40, \"seeds\": [3], \"replays\": 50, \"replay_seed\": 4}");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));

    String plan = folder.resolve("plan").toString();
    Ran.pressweek(
        "plan", plant.toString(), "--out", plan, "--steps", "40", "--seed", "3", "--now", NOW);
    String to = folder.resolve("stress").toString();
    Ran.pressweek(
        "stress",
        plant.toString(),
        plan + "/plan.json",
        "--runs",
        "50",
        "--seed",
        "4",
        "--out",
        to);
    Map<String, String> byStress = new HashMap<>();
    Files.readAllLines(Path.of(to, "stress.csv")).stream()
        .skip(1)
        .map(line -> line.split(","))
        .forEach(cells -> byStress.put(cells[0], cells[6]));

    JsonNode lines =
        new ObjectMapper()
            .readTree(folder.resolve("out/sweep_results.json").toFile())
            .at("/plans/0/figures/replays/lines");
    Map<String, String> bySweep = new HashMap<>();
    lines.forEach(
        line ->
            bySweep.put(
                line.path("line").asText(),
                line.path("on_time")
                    .decimalValue()
                    .multiply(BigDecimal.valueOf(100))
                    .setScale(1, RoundingMode.HALF_UP)
                    .toPlainString()));
    assertThat(bySweep).isEqualTo(byStress).isNotEmpty();
    assertThat(bySweep.values()).anyMatch(pct -> !pct.equals("100.0") && !pct.equals("0.0"));
  }

  @Test
  void whereNothingCanBePlannedTheReasonComesFirst() throws IOException {
    Ran ran = sweep("{\"steps\": 5, \"seeds\": [1, 2], \"scenarios\": [\"none.json\"]}");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.lines().get(0)).isEqualTo("Without figures");
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains(plant.getFileName() + " none: ")
        .contains(
            "is not a file; expected a scenario (2 plans) 2 plans of 5 steps each: 0 computed")
        .doesNotContain("median");
    assertThat(Files.readAllLines(folder.resolve("out/sweep.csv"))).hasSize(3);
  }

  @Test
  void aMissingScenarioIsSaidBeforeTheOthersArePlanned() throws IOException {
    Ran ran = sweep("{\"steps\": 5, \"scenarios\": [\"none.json\", \"\"]}");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.err())
        .startsWith("Without figures\n  - " + plant.getFileName() + " none: ")
        .contains("1 of 1");
    assertThat(ran.err().lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(ran.out()).containsSubsequence("Without figures", "median");
  }

  @Test
  void usageNamesItsArgumentsOnce() {
    assertThat(Ran.pressweek("sweep", "--help").out().lines().limit(5).toList().toString())
        .containsOnlyOnce("FOLDER... SWEEP");
  }
}
