package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code stress} and {@code learn} on the small plant. */
final class StressCommandTest {
  private static final Path SMALL = Path.of("../examples/quillback-small");

  @TempDir private Path out;
  @TempDir private Path folder;

  @BeforeEach
  void plan() throws IOException {
    try (Stream<Path> files = Files.list(SMALL)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, folder.resolve(file.getFileName().toString()));
      }
    }
    Ran.pressweek("plan", folder.toString(), "--out", out.toString(), "--steps", "100");
  }

  private Ran stress(String... more) {
    Stream<String> fixed =
        Stream.of("stress", folder.toString(), out.resolve("plan.json").toString());
    return Ran.pressweek(Stream.concat(fixed, Stream.of(more)).toArray(String[]::new));
  }

  @Test
  void aPlanIsReplayedAndTheTextFits() {
    Ran ran = stress("--runs", "200");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(ran.out())
        .contains("replayed 200 times with other luck each time (seed 1)")
        .contains("All figures are estimates.")
        .contains("What it would bring, under the same luck")
        .contains("plant estimate")
        .contains("What more time before each shipping cut-off would bring")
        .contains("  1 h  ")
        .contains("  24 h  ")
        .contains("Sure is a line that is on time in 90 % of the replays or more")
        .contains("sure: on time in 90 % of the replays (plant estimate)")
        .doesNotContain("cannot be replayed");
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(stress("--runs", "200").out()).isEqualTo(ran.out());
    assertThat(stress("--runs", "200", "--seed", "2").out()).isNotEqualTo(ran.out());
  }

  @Test
  void listsAndPageAreWritten() throws IOException {
    Path to = out.resolve("sure");
    Ran ran = stress("--runs", "50", "--out", to.toString());
    assertThat(ran.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(Files.readString(to.resolve("stress.csv")))
        .startsWith(
            "line,run,press,due,planned_ready,ready_90_pct,on_time_pct,on_time_low_pct,"
                + "on_time_high_pct,late_h,slack_needed_h\r\n")
        .contains("706/1,");
    assertThat(Files.readString(to.resolve("stress_gains.csv"))).contains("no breakdowns,");
    assertThat(Files.readString(to.resolve("stress_slack.csv")).lines()).hasSize(5);
    assertThat(Files.readString(to.resolve("stress.html")))
        .contains("How sure is the plan?")
        .contains("Estimates:")
        .contains("<caption>");
  }

  @Test
  void aPlanAgainstItselfIsNoBetter() {
    Ran ran = stress("--runs", "50", "--against", out.resolve("plan.json").toString());
    assertThat(ran.out())
        .contains("Neither surely holds better")
        .contains("by late hours: no difference");
  }

  @Test
  void aPlanOfAnotherPlantOrWeekIsRefused() throws IOException {
    Path plan = out.resolve("plan.json");
    Path orders = folder.resolve("orders.csv");
    Files.writeString(orders, Files.readString(orders).replaceAll("(?m)^7(\\d\\d),", "8$1,"));
    Files.delete(folder.resolve("promised.csv"));
    Files.deleteIfExists(folder.resolve("running.csv"));
    Path other = out.resolve("other");
    Ran.pressweek("plan", folder.toString(), "--out", other.toString(), "--steps", "20");
    Ran week = stress("--runs", "20", "--against", other.resolve("plan.json").toString());
    assertThat(week.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(week.err().replaceAll("\\s+", " "))
        .contains(other.resolve("plan.json") + ": the plan has none of the order lines of " + plan);

    Path file = folder.resolve("plant.json");
    Files.writeString(
        file, Files.readString(file).replace("Quillback Grips, three presses", "Another"));
    String refusal = plan + ": the plan is of plant \"Quillback Grips, three presses\"; expected";
    Ran plant = stress("--runs", "20");
    assertThat(plant.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(plant.err()).contains(refusal + " one of \"Another\", the plant of folder");
    Ran nameless = Ran.pressweek("stress", "../examples/three-files", plan.toString());
    assertThat(nameless.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(nameless.err()).contains(refusal).contains("whose plant has no name");
    Ran own = stress("--runs", "20", "--out", folder.toString());
    assertThat(own.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(own.err()).contains("is the plant's own folder");
    Ran promise =
        Ran.pressweek(
            "promise",
            folder.toString(),
            "KB32/M8-B/PP-BLK/ZN",
            "100",
            "--need",
            "2026-12-03",
            "--plan",
            plan.toString(),
            "--now",
            "2026-11-30T08:00");
    assertThat(promise.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(promise.err()).contains(refusal);
  }

  @Test
  void withoutLuckAllGoesByThePlan() throws IOException {
    Path file = folder.resolve("plant.json");
    String text = Files.readString(file).strip();
    String none =
        "\"uncertainty\": {\"cycle_spread_pct\": 0, \"scrap_spread_pct\": 0,"
            + " \"change_spread_pct\": 0, \"breakdown_every_h\": 0, \"receipt_late_pct\": 0}";
    Files.writeString(file, text.substring(0, text.length() - 1) + ", " + none + "}\n");
    Ran ran = stress("--runs", "20");
    assertThat(ran.err().replaceAll("\\s+", " ")).contains("changed since: plant.json");
    assertThat(ran.err().lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(ran.out())
        .containsPattern("if all goes by the plan, and (\\d+)\\.0 in the mean")
        .contains("a press never breaks down")
        .contains("(plant.json and plant estimate)");
  }

  @Test
  void badArgumentsAreSaid() throws IOException {
    assertThat(stress("--runs", "0").exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    Ran none = stress("--from-actuals");
    assertThat(none.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(none.err()).contains("actuals.csv is not there");
    Files.writeString(
        folder.resolve("plant.json"), "{\"uncertainty\": {\"repair_min\": -1, \"presses\": [7]}}");
    Ran bad = stress();
    assertThat(bad.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(bad.err())
        .contains("uncertainty.repair_min is the number -1; expected a number from 0 to")
        .contains("uncertainty.presses is the number 7; expected a list of objects");
  }

  @Test
  void pastRunsTellOfLuckAndOfStandards() throws IOException {
    StringBuilder runs =
        new StringBuilder("press,mold,planned_cycle_s,real_cycle_s,from_mold,real_change_min\n");
    for (int i = 0; i < 9; i++) {
      runs.append("V2,M-LV90,100,").append(110 + i).append(",M-ST50,").append(50 + i).append('\n');
    }
    Files.writeString(folder.resolve("actuals.csv"), runs);
    assertThat(stress("--from-actuals", "--runs", "20").out())
        .contains("cycles: 114.0 % of the planned in the middle")
        .contains("(actuals.csv, 9 runs)");

    String own = Files.readString(folder.resolve("standards.csv"));
    Path to = out.resolve("proposed").resolve("standards.csv");
    Ran ran = Ran.pressweek("learn", folder.toString(), "--out", to.getParent().toString());
    assertThat(ran.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(ran.out()).contains("9 runs of actuals.csv").contains("cycle_s ").contains("-> 114");
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(Files.readString(to)).contains("M-LV90,114\n").contains("M-ST50,60\n");
    assertThat(Files.readString(folder.resolve("standards.csv"))).isEqualTo(own);

    Files.copy(to, folder.resolve("standards.csv"), StandardCopyOption.REPLACE_EXISTING);
    assertThat(Ran.pressweek("check", folder.toString()).out()).doesNotContain("standards.csv");
    assertThat(Ran.pressweek("learn", folder.toString()).out())
        .contains("Stays:")
        .contains("cycle_s 114 (9 runs");

    Path mine = folder.resolve("standards.csv");
    Ran refused = Ran.pressweek("learn", folder.toString(), "--out", mine.toString());
    assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(refused.err()).contains("standards.csv is a file; expected a folder");
  }

  @Test
  void aSurePlanSaysWhatItWasComparedWith() {
    Ran ran =
        Ran.pressweek(
            "plan", folder.toString(), "--out", out.toString(), "--steps", "100", "--sure", "3");
    assertThat(ran.out())
        .contains("Plans compared under uncertain times (estimates)")
        .contains("  taken ");
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(
            Ran.pressweek("audit", folder.toString(), out.resolve("plan.json").toString())
                .exitCode())
        .isEqualTo(ExitCode.DONE);
  }
}
