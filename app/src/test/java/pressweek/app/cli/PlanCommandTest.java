package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * {@code plan} and {@code audit} on good and bad folders: exit codes, messages, no stack traces.
 */
final class PlanCommandTest {
  private static final Path SMALL = Path.of("../examples/quillback-small");

  @TempDir private Path folder;
  @TempDir private Path out;

  @BeforeEach
  void copy() throws IOException {
    try (Stream<Path> files = Files.list(SMALL)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, folder.resolve(file.getFileName().toString()));
      }
    }
  }

  private Ran plan() {
    return Ran.pressweek(
        "plan", folder.toString(), "--out", out.toString(), "--steps", "30", "--seed", "2");
  }

  private void replace(String file, String old, String fresh) throws IOException {
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertThat(text).contains(old);
    Files.writeString(path, text.replace(old, fresh));
  }

  @Test
  void progressGoesToErrorAndTheSummaryToOut() {
    Ran ran = plan();
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.err()).contains("avoidable cost").contains("late").contains("changes");
    assertThat(ran.out()).contains("706/1").contains("709/1").doesNotContain("Exception");
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void linesThatAreOnTimeAndPlacedExitWithNothing() throws IOException {
    Path orders = folder.resolve("orders.csv");
    String head = Files.readAllLines(orders).get(0);
    String first =
        Files.readAllLines(orders).stream().filter(l -> l.startsWith("701")).findFirst().get();
    Files.writeString(orders, head + "\n" + first + "\n");
    Files.delete(folder.resolve("promised.csv"));
    assertThat(plan().exitCode()).isEqualTo(ExitCode.DONE);
  }

  @ParameterizedTest
  @CsvSource({
    "orders.csv, quantity, amount, quantity",
    "presses.csv, press, thing, press",
    "molds.csv, live_cavities, holes, live_cavities"
  })
  void aMissingColumnIsSaid(String file, String old, String fresh, String said) throws IOException {
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    Files.writeString(path, text.replaceFirst("\\b" + old + "\\b", fresh));
    Ran ran = plan();
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains(file).contains(said).doesNotContain("Exception");
    assertThat(out).isEmptyDirectory();
  }

  @ParameterizedTest
  @CsvSource({"orders.csv", "presses.csv", "molds.csv", "plant.json", "guide.json"})
  void anEmptyFileIsSaid(String file) throws IOException {
    Files.writeString(folder.resolve(file), "");
    Ran ran = plan();
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains(file).doesNotContain("Exception");
  }

  @Test
  void aFolderThatIsNoneIsSaid() {
    Ran ran = Ran.pressweek("plan", folder.resolve("nowhere").toString(), "--out", out.toString());
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("nowhere").doesNotContain("Exception");
  }

  @ParameterizedTest
  @CsvSource({"--seconds, 0", "--steps, -1", "--seed, x", "--now, yesterday"})
  void badArgumentsAreSaid(String option, String value) {
    Ran ran = Ran.pressweek("plan", folder.toString(), "--out", out.toString(), option, value);
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains(option);
  }

  @Test
  void aPlanMadeFromOtherInputsIsRecognised() throws IOException {
    plan();
    String file = out.resolve("plan.json").toString();
    assertThat(Ran.pressweek("audit", folder.toString(), file).exitCode()).isEqualTo(ExitCode.DONE);
    replace("orders.csv", "701", "7010");
    Ran ran = Ran.pressweek("audit", folder.toString(), file);
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("orders.csv");
  }

  @Test
  void aTamperedPlanIsFound() throws IOException {
    plan();
    Path file = out.resolve("plan.json");
    String text = Files.readString(file);
    int late = text.lastIndexOf("\"late_lines\"");
    assertThat(late).isPositive();
    int end = text.indexOf(',', late);
    Files.writeString(file, text.substring(0, late) + "\"late_lines\" : 0" + text.substring(end));
    Ran ran = Ran.pressweek("audit", folder.toString(), file.toString());
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.out()).contains("FIGURES");
  }

  private List<String> written() throws IOException {
    try (Stream<Path> files = Files.walk(out)) {
      return files
          .filter(Files::isRegularFile)
          .map(f -> out.relativize(f).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  @Test
  void everythingIsWrittenAndNothingIsLeftBeside() throws IOException {
    plan();
    assertThat(written())
        .containsExactly(
            "calendar-presses.ics",
            "calendar-setters.ics",
            "changes.csv",
            "handover.csv",
            "index.html",
            "papers/changes.html",
            "papers/handover.html",
            "papers/labels.html",
            "papers/pulls.html",
            "papers/schedule.html",
            "papers/shortages.html",
            "papers/unplaced.html",
            "plan.json",
            "plan.xlsx",
            "pulls.csv",
            "schedule.csv",
            "shortages.csv",
            "unplaced.csv");
    assertThat(Files.readString(out.resolve("papers/handover.html")))
        .contains("There is no earlier plan to compare with.");
  }

  @Test
  void thePlanThatLiesThereIsTheOneThatIsReplaced() throws IOException {
    plan();
    plan();
    assertThat(Files.readString(out.resolve("index.html")))
        .contains("Nothing has changed for the floor since plan 2026-W49/1.");
    assertThat(Files.readAllLines(out.resolve("handover.csv"))).hasSize(1);
  }

  @Test
  void aLineThatIsTakenAwayIsHandedOver(@TempDir Path elsewhere) throws IOException {
    plan();
    Path orders = folder.resolve("orders.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(orders));
    lines.removeIf(l -> l.startsWith("702"));
    Files.write(orders, lines);
    String before = out.resolve("plan.json").toString();
    Ran ran =
        Ran.pressweek(
            "plan",
            folder.toString(),
            "--out",
            elsewhere.toString(),
            "--steps",
            "30",
            "--replaces",
            before);
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.out()).contains("2026-W49/2, replaces 2026-W49/1");
    assertThat(Files.readString(elsewhere.resolve("handover.csv"))).contains("\ngone,702,");
  }

  @Test
  void aReplacedPlanThatCannotBeReadIsSaid() throws IOException {
    Path other = folder.resolve("other.json");
    for (String text : List.of("", "{}", "{\"schema\":\"pressweek-plan/1\"}")) {
      Files.writeString(other, text);
      Ran ran =
          Ran.pressweek(
              "plan", folder.toString(), "--out", out.toString(), "--replaces", other.toString());
      assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(ran.err()).contains("--replaces").contains("other.json");
      assertThat(out).isEmptyDirectory();
    }
    Files.writeString(out.resolve("plan.json"), "{}");
    Ran ran = plan();
    assertThat(ran.exitCode()).isEqualTo(ExitCode.UNPLACED);
    assertThat(ran.err()).contains("plan.json").contains("nothing is compared with it");
  }

  @Test
  void aReplacedPlanWhoseRunsMakeUnknownLinesIsNotComparedWith() throws IOException {
    plan();
    Path file = out.resolve("plan.json");
    String text = Files.readString(file);
    assertThat(text).contains("\"job\" : \"701/1\"");
    Files.writeString(file, text.replace("\"job\" : \"701/1\"", "\"job\" : \"999/1\""));
    assertThat(plan().err()).contains("no job of the plan's week");
    assertThat(Files.readAllLines(out.resolve("handover.csv"))).hasSize(1);
  }
}
