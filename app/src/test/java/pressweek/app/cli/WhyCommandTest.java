package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code why} on the small plant, in which 706/1 waits for its insert and is late. */
final class WhyCommandTest {
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

  private Ran why(String line, String... more) {
    String[] args =
        Stream.concat(
                Stream.of(
                    "why",
                    folder.toString(),
                    out.resolve("plan.json").toString(),
                    line,
                    "--steps",
                    "50"),
                Stream.of(more))
            .toArray(String[]::new);
    return Ran.pressweek(args);
  }

  @Test
  void aLateLineSaysItsCostItsTimeAndItsCure() {
    Ran ran = why("706/1");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.out())
        .contains("due Tue 15:00, ready Wed 08:40: 17 h 40 min late; on V2 with mold M-LV90")
        .contains("What it costs: EUR 168.94")
        .contains("Where the time goes from the start of the plan: 2 d 2 h 40 min")
        .contains("not in the house (NB-M10-ZN): comes with a delivery")
        .contains("deliveries of NB-M10-ZN a day earlier: on time, costs EUR 144.17 less");
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void aLineOnTimeSaysSoAndWhereElseItCouldGo() {
    Ran ran = why("705");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(ran.out())
        .contains("on time; on V1 with mold M-ST50")
        .contains("What it costs: EUR 30.64")
        .contains("V1 with mold M-ST50, after 704/1")
        .doesNotContain("What would cure it");
  }

  @Test
  void asJsonTheMinutesAddUp() throws IOException {
    JsonNode json = new ObjectMapper().readTree(why("706/1", "--as", "json").out());
    int total = 0;
    for (JsonNode stretch : json.get("time")) {
      total += stretch.get("minutes").asInt();
    }
    assertThat(total).isEqualTo((2 * 24 + 2) * 60 + 40);
    assertThat(json.get("late_min").asInt()).isEqualTo(1060);
    assertThat(json.get("cost").asLong()).isEqualTo(16_894_166L);
    assertThat(json.get("cures").get(0).get("costs_more").asLong()).isEqualTo(-14_416_666L);
    assertThat(json.get("elsewhere").isEmpty()).isTrue();
  }

  @Test
  void aLineThatFellOutSaysItsReason() {
    Ran ran = why("709");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.out()).contains("not in the plan: on hold: drawing is not signed");
  }

  @Test
  void anUnknownLineNamesTheNearest() {
    Ran ran = why("7O6");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("\"7O6\" is not in plan 2026-W49/1; expected one such as");
  }

  @Test
  void otherInputsAreANote() throws IOException {
    Path orders = folder.resolve("orders.csv");
    Files.writeString(orders, Files.readString(orders) + "\n");
    Ran ran = why("705/1");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(ran.err()).contains("made from other inputs; changed since: orders.csv");
  }

  @Test
  void aPlanThatIsNoneIsSaid() throws IOException {
    Files.writeString(out.resolve("plan.json"), "{}");
    Ran ran = why("705/1");
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("plan.json").doesNotContain("Exception");
  }
}
