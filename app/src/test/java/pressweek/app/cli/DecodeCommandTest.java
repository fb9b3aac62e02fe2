package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
        .contains("colour           SGR             code: part 3 \"PP-SGR\": signal red")
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
