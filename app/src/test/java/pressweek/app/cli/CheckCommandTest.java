package pressweek.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  @Test
  void weekOfTheDemoPlantHasFiveLinesThatCannotBePlanned() {
    Ran ran = Ran.pressweek("check", "../examples/quillback-week");
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.out())
        .contains("order 52163/3 has its pieces: 450 from finished stock")
        .contains("Order lines that cannot be planned (5)")
        .contains("on hold: drawing revision C is not signed")
        .contains("no food record for colour TEA")
        .contains("Not checked this week")
        .endsWith("Order lines that can be planned: 144" + System.lineSeparator());
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void threeFilesAreEnough() {
    Ran ran = Ran.pressweek("check", "../examples/three-files");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out()).contains("Order lines that can be planned: 25").contains("add: lots.csv");
  }

  @Test
  void errorsInTheFilesMeanNoPlan(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("orders.csv"), "order,item,quantity,due\n1,M1,x,2026-12-02\n");
    Files.writeString(folder.resolve("presses.csv"), "press,orientation,clamp_kn\nP1,sideways,9\n");
    Files.writeString(
        folder.resolve("molds.csv"), "mold,makes,live_cavities,cycle_s,runs_on\nM1,M1,4,30,\n");
    Ran ran = Ran.pressweek("check", folder.toString());
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.out())
        .contains("Errors (1)")
        .contains("presses.csv:2: ")
        .contains("orders.csv:2: ")
        .contains("There would be no plan");
  }

  @Test
  void unreadableOrderLineIsToldOnce(@TempDir Path folder) throws IOException {
    Files.writeString(
        folder.resolve("orders.csv"),
        "order,item,quantity,due\n1,M1,x,2026-12-02\n2,M1,9,2026-12-02\n");
    Files.writeString(folder.resolve("presses.csv"), "press,orientation,clamp_kn\nP1,vertical,9\n");
    Files.writeString(
        folder.resolve("molds.csv"), "mold,makes,live_cavities,cycle_s,runs_on\nM1,M1,4,30,\n");
    Ran ran = Ran.pressweek("check", folder.toString());
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.out()).containsOnlyOnce("orders.csv:2: ").doesNotContain("Warnings");
  }
}
