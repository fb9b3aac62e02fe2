package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DecodeCommandTest {
  private static final String WEEK = "../examples/quillback-week";

  @Test
  void goodCodeIsToldAttributeByAttribute() {
    Ran ran = Ran.pressweek("decode", WEEK, "LV90/M10-B/PP-SGR/A2/FC");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.lines().get(0)).isEqualTo("LV90/M10-B/PP-SGR/A2/FC  (head on a nut)");
    assertThat(ran.out())
        .contains("colour           SGR             code: part 3")
        .contains("  3 PP-SGR             material: polypropylene, signal red")
        .contains("hub              solid           rule: no hollow in which food could stay")
        .contains("insert           NB-M10-A2       record: inserts.csv:")
        .contains("  mold M-LV90-2  on ");
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void unreadableCodeIsToldWithItsPlace() {
    Ran ran = Ran.pressweek("decode", WEEK, "LV90/M10-Q/PP-SGR/A2", "LV90/M10-B/PP-SGR/A2");
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.out())
        .contains("unknown nut \"Q\" at position 10")
        .contains("cure: correct the code")
        .contains("LV90/M10-B/PP-SGR/A2  (head on a nut)");
  }

  @Test
  void aCaretStandsUnderTheFault() {
    Ran ran = Ran.pressweek("decode", WEEK, "LV90/M10-B/PP-SGT/A2/FC");
    assertThat(ran.lines().subList(0, 3))
        .containsExactly(
            "LV90/M10-B/PP-SGT/A2/FC",
            "              ^^^",
            "  unknown colour \"SGT\" at position 15; nearest: SGR, SLT, LGY, NAT, SKY (14");
  }

  @Test
  void theGuidesOwnSpellingIsTold() {
    Ran ran = Ran.pressweek("decode", WEEK, "lv90/m10-b/pp-sgr/a2/rs/fc");
    assertThat(ran.lines()).contains("  the guide writes it LV90/M10-B/PP-SGR/A2/FC/RS");
  }

  @Test
  void jsonIsOneObjectALine() {
    Ran ran = Ran.pressweek("decode", WEEK, "--as", "json", "ST50/M8-B/PP-BLK/ZN", "ST5");
    assertThat(ran.lines()).hasSize(2);
    assertThat(ran.lines().get(0))
        .startsWith("{\"code\":\"ST50/M8-B/PP-BLK/ZN\"")
        .contains("{\"name\":\"hub\",\"value\":\"cored\",\"origin\":\"default\"");
    assertThat(ran.lines().get(1)).contains("\"good\":false", "\"position\":1", "\"nearest\":[");
  }

  @Test
  void csvIsARowACode() {
    Ran ran = Ran.pressweek("decode", WEEK, "--as", "csv", "ST50/M8-B/PP-BLK/ZN", "ST5");
    assertThat(ran.lines()).hasSize(3);
    assertThat(ran.lines().get(0))
        .startsWith("code,canonical,good,family,head,")
        .contains(",position,");
    assertThat(ran.lines().get(1)).contains("star knob,50,M8x1.25,", ",PP,BLK,steel,zinc");
  }

  @Test
  void anyTextIsAnswered() {
    Random random = new Random(7);
    List<String> arguments = new ArrayList<>(List.of("decode", WEEK, "--as", "json"));
    for (int i = 0; i < 500; i++) {
      StringBuilder text = new StringBuilder("x");
      int length = random.nextInt(60);
      for (int c = 0; c < length; c++) {
        int wide = random.nextInt(0xD800);
        text.appendCodePoint(random.nextInt(3) == 0 ? wide : 32 + random.nextInt(95));
      }
      arguments.add(text.toString());
    }
    Ran ran = Ran.pressweek(arguments.toArray(String[]::new));
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.lines()).hasSize(500).allMatch(line -> line.contains("\"good\":false"));
  }

  @Test
  void codeThatNoMoldMakesSaysWhy() {
    Ran ran = Ran.pressweek("decode", WEEK, "KB40/M8-S30/ABS-BLK/ZN");
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.out())
        .contains("no mold of head KB40 fits: M-KB40-1 takes blind|tall, not stud");
  }

  @Test
  void folderWithoutAGuideIsBadInput() {
    Ran ran = Ran.pressweek("decode", "../examples/three-files", "LV90");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("without it an item code is only a name");
  }

  @Test
  void faultyGuideIsBadInputWithItsLines(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("guide.json"), "{\n\"shcema\": \"x\"}");
    Ran ran = Ran.pressweek("decode", folder.toString(), "LV90");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("guide.json:2: unknown key \"shcema\"; nearest: schema");
  }

  @Test
  void missingFolderIsBadInput() {
    Ran ran = Ran.pressweek("decode", "no-such-folder", "LV90");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("no-such-folder is not a folder");
  }

  @Test
  void commandWithoutACodeIsBadInput() {
    assertThat(Ran.pressweek("decode", WEEK).exitCode()).isEqualTo(2);
  }
}
