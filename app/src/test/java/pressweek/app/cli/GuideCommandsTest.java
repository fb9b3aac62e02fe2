package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that prove, print and teach a guide. */
class GuideCommandsTest {
  private static final String SMALL = "../examples/quillback-small";
  private static final String TWINS =
      """
      {"schema": "pressweek-guide/1", "separator": ".",
       "fields": {"a": {"sets": "resin", "table": {"X": "PP"}},
                  "b": {"sets": "colour", "table": {"X": "BLK"}}},
       "parts": {"one": {"forms": ["{a}"]}, "other": {"forms": ["{b}"]}},
       "families": [{"name": "first", "parts": ["one"]},
                    {"name": "second", "parts": ["other"]}]}
      """;

  @TempDir private Path folder;

  private void guide(String json) throws IOException {
    Files.writeString(folder.resolve("guide.json"), json);
  }

  @Test
  void proofOfAGoodGuideIsDone() {
    Ran ran = Ran.pressweek("proof", SMALL);
    assertThat(ran.exitCode()).as(ran.out()).isZero();
    assertThat(ran.lines()).last().asString().contains("codes written and read back (seed 1)");
    assertThat(ran.out()).doesNotContain("warning:").doesNotContain("error:");
  }

  @Test
  void proofTellsFindingsWithTheirLines() throws IOException {
    guide(TWINS);
    Ran ran = Ran.pressweek("proof", folder.toString(), "--seed", "9");
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.out())
        .startsWith("guide.json:6: error: families \"first\" and \"second\" cannot be told apart")
        .contains("1 error, 0 warnings, 0 notes.")
        .contains("(seed 9)");
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void proofAsJson() throws IOException {
    guide(TWINS);
    Ran ran = Ran.pressweek("proof", folder.toString(), "--json");
    assertThat(ran.exitCode()).isEqualTo(1);
    JsonNode json = new ObjectMapper().readTree(ran.out());
    assertThat(json.get("seed").asLong()).isEqualTo(1);
    assertThat(json.get("codes_written").asInt()).isPositive();
    assertThat(json.get("findings")).hasSize(1);
    assertThat(json.get("findings").get(0).get("line").asInt()).isEqualTo(6);
    assertThat(json.get("findings").get(0).get("severity").asText()).isEqualTo("error");
  }

  @Test
  void guideThatCannotBeReadIsBadInput() throws IOException {
    guide("{\n\"shcema\": \"x\"}");
    for (String command : new String[] {"proof", "sheet", "practise"}) {
      Ran ran = Ran.pressweek(command, folder.toString());
      assertThat(ran.exitCode()).as(command).isEqualTo(2);
      assertThat(ran.err()).contains("guide.json:2: unknown key \"shcema\"");
    }
    assertThat(Ran.pressweek("sheet", "../examples/three-files").exitCode()).isEqualTo(2);
  }

  @Test
  void sheetIsWrittenAndItsPathPrinted() throws IOException {
    Path page = folder.resolve("new").resolve("sheet.html");
    Ran ran = Ran.pressweek("sheet", SMALL, "--out", page.toString());
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.lines()).containsExactly(page.toString());
    assertThat(Files.readString(page)).contains("How a code is built").contains("clamping lever");
  }

  @Test
  void sheetThatCannotBeWrittenIsBadInput() {
    Ran ran = Ran.pressweek("sheet", SMALL, "--out", folder.toString());
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("cannot write " + folder);
  }

  @Test
  void questionsArePrintedAndTheirAnswersWhenAsked() {
    Ran questions = Ran.pressweek("practise", SMALL, "--questions", "10", "--seed", "3");
    assertThat(questions.exitCode()).as(questions.err()).isZero();
    assertThat(questions.out()).contains(" 10. ").doesNotContain("Answers");
    Ran answers = Ran.pressweek("practise", SMALL, "--questions", "10", "--seed", "3", "--answers");
    assertThat(answers.out()).startsWith(questions.out()).contains("Answers");
    assertThat(answers.lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void practicePageIsWritten() throws IOException {
    Path page = folder.resolve("practice.html");
    Ran ran = Ran.pressweek("practise", SMALL, "--out", page.toString());
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out().strip()).isEqualTo(page.toString());
    assertThat(Files.readString(page)).contains("id=\"answers\"");
  }

  @Test
  void questionsMustBeAskedForInReason() {
    assertThat(Ran.pressweek("practise", SMALL, "--questions", "0").exitCode()).isEqualTo(2);
  }
}
