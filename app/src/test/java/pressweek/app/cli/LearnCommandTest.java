package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.difflib.unifieddiff.UnifiedDiff;
import com.github.difflib.unifieddiff.UnifiedDiffFile;
import com.github.difflib.unifieddiff.UnifiedDiffReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * {@code learn} in a plant of two presses and two molds, whose runs took 44 s where the standard
 * says 40, and 33 s in a mold without a standard; changes took 78 min where 60 are recorded and 50
 * where 30 were planned; 81 % of the time made parts where the plant says 85.
 */
final class LearnCommandTest {
  private static final String STANDARDS =
      "mold; resin;press;Zyklus;note\r\n\r\nM1;;;\"40,0\";\"says; all\"\r\nM1;;P2;50,5;\r\n";
  private static final String CHANGES = "press,from_mold,to_mold,minutes\nP1,M2,M1,60";
  private static final String PLANT =
      "{\n  \"name\":\"Ours\",\n  \"efficiency_pct\" : 85,\n" + "  \"of our own\": [1, 2]\n}\n";

  @TempDir private Path temp;
  private Path folder;
  private Path out;

  @BeforeEach
  void plant() throws IOException {
    folder = Files.createDirectory(temp.resolve("plant"));
    out = temp.resolve("proposed");
    write("orders.csv", "order,item,quantity,due\n1,M1,100,2026-12-02\n");
    write("presses.csv", "press,orientation,clamp_kn\nP1,horizontal,900\nP2,vertical,600\n");
    write("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on\nM1,M1,4,30,\nM2,M2,4,30,\n");
    write("headings.json", "{\"standards.csv\": {\"Zyklus\": \"cycle_s\", \"note\": \"\"}}\n");
    write("standards.csv", STANDARDS);
    write("changes_recorded.csv", CHANGES);
    write("plant.json", PLANT);
    write("actuals.csv", runs());
  }

  private static String runs() {
    StringBuilder runs =
        new StringBuilder(
            "press,mold,from_mold,real_cycle_s,real_scrap_pct,planned_change_min,real_change_min,"
                + "real_efficiency_pct\n");
    for (int i = 0; i < 9; i++) {
      double off = 0.1 * (i - 4);
      String form = "P1,M1,M2,%.1f,%.1f,60,%d,%.1f\n";
      runs.append(String.format(Locale.ROOT, form, 44 + off, 2 + off, 74 + i, 81 + off));
      runs.append(String.format(Locale.ROOT, "P1,M2,M1,%.1f,,30,%d,\n", 33 + off, 46 + i));
    }
    return runs.toString();
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private Ran learn(String... more) {
    List<String> args = new ArrayList<>(List.of("learn", folder.toString()));
    args.addAll(List.of(more));
    return Ran.pressweek(args.toArray(String[]::new));
  }

  private Ran learnOut() {
    return learn("--out", out.toString());
  }

  private static Map<String, String> files(Path of) throws IOException {
    Map<String, String> files = new HashMap<>();
    try (Stream<Path> paths = Files.list(of)) {
      for (Path path : paths.toList()) {
        files.put(
            path.getFileName().toString(), Files.readString(path, StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }

  @Test
  void onlyWhatIsProposedChanges() throws IOException {
    Map<String, String> before = files(folder);
    Ran ran = learnOut();
    assertThat(ran.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(ran.lines()).allMatch(line -> line.length() <= 80 || line.startsWith("  /"));
    assertThat(files(folder)).isEqualTo(before);
    Map<String, String> proposed = files(out);
    assertThat(proposed)
        .containsOnlyKeys("standards.csv", "changes_recorded.csv", "plant.json", "learned.diff");
    assertThat(proposed.get("standards.csv"))
        .isEqualTo(
            "mold; resin;press;Zyklus;note;scrap_pct\r\n\r\nM1;;;\"44\";\"says; all\";2\r\n"
                + "M1;;P2;50,5;;\r\nM2;;;33;;\r\n");
    assertThat(proposed.get("changes_recorded.csv"))
        .isEqualTo("press,from_mold,to_mold,minutes\nP1,M2,M1,78\nP1,M1,M2,50\n");
    assertThat(proposed.get("plant.json")).isEqualTo(PLANT.replace("85", "81"));
  }

  @Test
  void theDiffAppliedToTheFolderGivesTheProposedFiles() throws Exception {
    write("changes_recorded.csv", CHANGES + "\n");
    learnOut();
    Map<String, String> was = files(folder);
    Map<String, String> proposed = files(out);
    UnifiedDiff diff =
        UnifiedDiffReader.parseUnifiedDiff(
            new ByteArrayInputStream(
                proposed.get("learned.diff").replace("\r", "").getBytes(StandardCharsets.UTF_8)));
    assertThat(diff.getFiles()).hasSize(3);
    for (UnifiedDiffFile file : diff.getFiles()) {
      String name = file.getToFile();
      assertThat(file.getPatch().applyTo(was.get(name).lines().toList()))
          .as(name)
          .isEqualTo(proposed.get(name).lines().toList());
    }
  }

  @Test
  void theProposedFolderIsReadAndProposesNothing() throws IOException {
    learnOut();
    for (String name : List.of("standards.csv", "changes_recorded.csv", "plant.json")) {
      write(name, Files.readString(out.resolve(name)));
    }
    assertThat(Ran.pressweek("check", folder.toString()).exitCode()).isEqualTo(ExitCode.DONE);
    Ran again = learnOut();
    assertThat(again.out())
        .contains("18 runs of actuals.csv: 0 changes proposed")
        .contains("Nothing to write");
    assertThat(files(out)).isEmpty();
  }

  @Test
  void whereThereIsNoFileItBeginsOne() throws IOException {
    Files.delete(folder.resolve("standards.csv"));
    Files.delete(folder.resolve("changes_recorded.csv"));
    Files.delete(folder.resolve("plant.json"));
    learnOut();
    Map<String, String> proposed = files(out);
    assertThat(proposed.get("standards.csv"))
        .startsWith("mold,resin,press,cycle_s,scrap_pct\nM1,,,44,2\n");
    assertThat(proposed.get("changes_recorded.csv")).contains("\nP1,M2,,,M1,,,78\n");
    assertThat(proposed.get("plant.json")).isEqualTo("{\n  \"efficiency_pct\": 81\n}\n");
    assertThat(proposed.get("learned.diff"))
        .contains("--- /dev/null\n+++ b/plant.json\n@@ -0,0 +1,3 @@\n");
  }

  @Test
  void aFigureThatPlantJsonDoesNotGiveComesFirst() throws IOException {
    write("plant.json", "{\n    \"name\": \"Ours\"\n}");
    learnOut();
    assertThat(out.resolve("plant.json"))
        .content()
        .isEqualTo("{\n    \"efficiency_pct\": 81,\n    \"name\": \"Ours\"\n}");
    write("plant.json", Files.readString(out.resolve("plant.json")));
    assertThat(learn().out()).contains("efficiency_pct 81 (9 runs");
  }

  @Test
  void ofAWorkbookThereIsACsvAndNoDiff() throws IOException {
    Files.delete(folder.resolve("changes_recorded.csv"));
    try (OutputStream file = Files.newOutputStream(folder.resolve("changes_recorded.xlsx"));
        Workbook book = new Workbook(file, "t", "1.0")) {
      Worksheet sheet = book.newWorksheet("changes");
      List<List<String>> rows =
          List.of(
              List.of("press", "from_mold", "to_mold", "minutes"),
              List.of("P2", "M2", "M1", "20"),
              List.of("P1", "M2", "M1", "60"));
      for (int r = 0; r < rows.size(); r++) {
        for (int c = 0; c < 4; c++) {
          sheet.value(r, c, rows.get(r).get(c));
        }
      }
    }
    Ran ran = learnOut();
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains(
            "changes_recorded.csv has all rows of changes_recorded.xlsx, of which no diff is made;"
                + " it goes in its place");
    Map<String, String> proposed = files(out);
    assertThat(proposed.get("changes_recorded.csv"))
        .isEqualTo("press,from_mold,to_mold,minutes\nP2,M2,M1,20\nP1,M2,M1,78\nP1,M1,M2,50\n");
    assertThat(proposed.get("learned.diff")).doesNotContain("changes").contains("standards.csv");
  }

  @Test
  void aFileOfAnotherNameIsCalledByIt() throws IOException {
    Path other = temp.resolve("act.csv");
    Files.writeString(other, runs() + "P9,M1,,40,,,,\n");
    Ran ran = learn("--actuals", other.toString());
    assertThat(ran.out()).contains("18 runs of act.csv").doesNotContain("actuals.csv");
    assertThat(ran.err()).contains("act.csv:20: press \"P9\"").doesNotContain("actuals.csv");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plant", "plant/proposed", "plant/../plant", "link"})
  void theFolderItselfIsRefused(String name) throws IOException {
    Files.createSymbolicLink(temp.resolve("link"), folder);
    Map<String, String> before = files(folder);
    Ran ran = learn("--out", temp.resolve(name).toString());
    assertThat(ran.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("is the plant's own folder");
    assertThat(files(folder)).isEqualTo(before);
  }

  @Test
  void whatIsSomethingElseIsRefused() throws IOException {
    Files.createDirectory(out);
    Files.writeString(out.resolve("orders.csv"), "order\n");
    assertThat(learnOut().err()).contains("holds orders.csv; expected a folder that is new");
    Ran file = learn("--out", temp.resolve("new.csv").toString());
    assertThat(file.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(file.err()).contains("is a file; expected a folder for standards.csv");
    Path scenario = temp.resolve("s.json");
    Files.writeString(
        scenario,
        "{\"schema\": \"pressweek-scenario/1\", \"name\": \"s\", \"scale\": [{\"file\":"
            + " \"orders.csv\", \"scale\": {\"quantity\": 2}}]}");
    assertThat(
            learn("--scenario", scenario.toString(), "--out", temp.resolve("x").toString()).err())
        .contains("expected no --scenario");
  }

  @Test
  void scrapWithoutARowToHoldItIsSaidAndNotWritten() throws IOException {
    write("actuals.csv", "press,mold,real_scrap_pct\n" + "P1,M2,9\n".repeat(9));
    Ran ran = learnOut();
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains("9 runs of actuals.csv: 0 changes proposed")
        .contains("Not proposed: no row of standards.csv holds it");
  }
}
