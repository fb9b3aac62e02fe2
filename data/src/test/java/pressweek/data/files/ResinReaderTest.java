package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResinReaderTest {
  @TempDir private Path path;

  private double letDownPct(String header, String row) {
    Folder folder = new PlantFolder(path).with("colours.csv", header + "\n" + row + "\n").read();
    assertThat(folder.errors()).isEmpty();
    return folder.materials().colours().get(0).letDownPct().orElseThrow();
  }

  /** 25 parts of natural resin and 1 of masterbatch are 26 (arithmetic). */
  @Test
  void aLetDownIsPercentOfTheTotalOrARatio() {
    String header = "colour,masterbatch,let_down_pct";
    assertThat(letDownPct(header, "RED,MB,4")).isCloseTo(4, within(1e-12));
    assertThat(letDownPct(header, "RED,MB,4 %")).isCloseTo(4, within(1e-12));
    assertThat(letDownPct(header, "RED,MB,25:1")).isCloseTo(3.846, within(0.001));
    assertThat(letDownPct(header, "RED,MB,1:25")).isCloseTo(3.846, within(0.001));
    assertThat(letDownPct(header.replace(',', ';'), "RED;MB;2,5")).isCloseTo(2.5, within(1e-12));
  }

  @Test
  void aColourWithoutMasterbatchMayHaveALetDownOfNothing() {
    assertThat(letDownPct("colour,let_down_pct", "NAT,0")).isZero();
    assertThat(letDownPct("colour,let_down_pct", "NAT,0.0 %")).isZero();
  }

  /** A thermoset goes from a warm barrel into a hot mold. */
  @Test
  void aThermosetIsColderThanItsMold() {
    Folder folder =
        new PlantFolder(path)
            .with("resins.csv", "resin,melt_c,mold_c,eject_c,barrel\nPF,105,170,170,thermoset\n")
            .read();
    assertThat(folder.findings()).isEmpty();
  }

  @Test
  void aPressAndItsDryerNameEachOther() {
    PlantFolder folder =
        new PlantFolder(path)
            .with("presses.csv", "press,orientation,clamp_kn,dryer\nP1,vertical,500,D1\n")
            .with("dryers.csv", "dryer,hopper_l,feeds\nD1,60,P1\nD2,80.5,\n");
    assertThat(folder.findings()).isEmpty();
    assertThat(folder.read().floor().dryers().get(1).hopperL()).isEqualTo(80.5);
    folder.with("presses.csv", "press,orientation,clamp_kn,dryer\nP1,vertical,500,D3\n");
    assertThat(folder.findings())
        .containsExactly("presses.csv:2: dryer \"D3\" is not in dryers.csv; did you mean \"D1\"?");
  }

  @Test
  void severalDryersMayFeedAPress() {
    PlantFolder folder =
        new PlantFolder(path)
            .with("presses.csv", "press,orientation,clamp_kn,dryer\nP1,vertical,500,D1|D2\n")
            .with("dryers.csv", "dryer,hopper_l,feeds\nD1,60,\nD2,80.5,\nD3,20,P1\n");
    assertThat(folder.findings()).isEmpty();
    assertThat(folder.read().floor().presses().get(0).dryers()).containsExactly("D1", "D2");
    folder.with("presses.csv", "press,orientation,clamp_kn,dryer\nP1,vertical,500,D1|D9\n");
    assertThat(folder.findings())
        .containsExactly("presses.csv:2: dryer \"D9\" is not in dryers.csv; did you mean \"D1\"?");
  }
}
