package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Option;
import pressweek.data.problem.Standing;

class PressFinderTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
  }

  private void mold(String columns, String values) {
    boolean recorded = columns.contains("runs_on");
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s," + columns + (recorded ? "" : ",runs_on"),
        "M1,M1,4,30," + values + (recorded ? "" : ","));
  }

  private void presses(String columns, String first, String second) {
    plant.file(
        "presses.csv",
        "press,orientation,clamp_kn," + columns,
        "P1,horizontal,900," + first,
        "P2,vertical,600," + second);
  }

  private Option option(String press) {
    return plant.job().options().stream()
        .filter(option -> option.press().equals(press))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void recordOfPressesExcludesAllOthers() {
    mold("runs_on", "P2:proven");
    assertThat(plant.presses()).containsExactly("P2");
    assertThat(option("P2").standing()).isEqualTo(Standing.PROVEN);
    mold("runs_on", "P2");
    assertThat(option("P2").standing()).isEqualTo(Standing.ALLOWED);
  }

  @Test
  void onlyNeverLeavesTheOthersToTheChecks() {
    mold("runs_on", "P2:never");
    assertThat(plant.presses()).containsExactly("P1");
  }

  @Test
  void preferredPressComesFirst() {
    mold("runs_on", "P1:proven|P2:preferred");
    assertThat(plant.presses()).containsExactly("P2", "P1");
  }

  @Test
  void orientationOfTheMoldCounts() {
    mold("orientation", "vertical");
    assertThat(plant.presses()).containsExactly("P2");
    assertThat(option("P2").standing()).isEqualTo(Standing.CHECKED);
  }

  /** 4 x 30 cm2 + 5 cm2 at 4.5 kN/cm2 and a factor of 1.1 are 618.75 kN. */
  @Test
  void clampForceIsCheckedWithTheFactor() {
    mold("part_area_cm2,runner_area_cm2", "30,5");
    assertThat(plant.presses()).containsExactly("P1");
    mold("part_area_cm2,runner_area_cm2", "29,5"); // 598.95 kN
    assertThat(plant.presses()).containsExactly("P1", "P2");
  }

  @Test
  void cavityPressureOfTheResinBeatsThePlants() {
    mold("part_area_cm2", "30");
    plant.file("resins.csv", "resin,cavity_kn_cm2", "PP,3");
    assertThat(plant.presses()).containsExactly("P1", "P2");
    plant.file("resins.csv", "resin,cavity_kn_cm2", "PP,7");
    assertThat(plant.unplaced().reason())
        .isEqualTo(
            "no press takes mold M1: P1 clamp 900 kN of 924 kN needed; P2 clamp 600 kN of 924 kN"
                + " needed");
    assertThat(plant.unplaced().cure()).contains("molds.csv runs_on");
  }

  @Test
  void recordBeatsTheComputedClampForceAndSaysSo() {
    mold("part_area_cm2,runs_on", "60,P2:proven");
    assertThat(option("P2").notes())
        .containsExactly("estimate: clamp 600 kN of 1188 kN needed; the record decides");
  }

  /** 4 x 20 g of PP (0.905 g/cm3); a barrel of 100 g polystyrene holds 86.2 g of it. */
  @Test
  void shotShareWarnsAndStops() {
    plant.file("resins.csv", "resin,density", "PP,0.905");
    mold("part_g", "20");
    presses("shot_ps_g", "100", "140");
    assertThat(plant.presses()).containsExactly("P2"); // P1: 92.8 %
    assertThat(option("P2").notes())
        .containsExactly("shot is 66.3 % of the barrel, usual is 20-65 %");
    presses("shot_ps_g", "200", "600");
    assertThat(option("P1").notes()).isEmpty(); // 46.4 %
    assertThat(option("P2").notes())
        .containsExactly("shot is 15.5 % of the barrel, usual is 20-65 %");
  }

  @Test
  void shotBeyondTheStopNeedsAProvenPress() {
    plant.file("resins.csv", "resin,density", "PP,0.905");
    presses("shot_ps_g", "100", "100");
    mold("part_g,runs_on", "20,P1:proven|P2:allowed");
    assertThat(plant.presses()).containsExactly("P1");
    mold("part_g,runs_on", "20,P2:allowed");
    assertThat(plant.unplaced().reason())
        .contains("P2 shot is 92.8 % of the barrel, above 80 % only where proven");
  }

  @Test
  void longStayInTheBarrelIsNoted() {
    plant.file("resins.csv", "resin,density,residence_max_min", "PP,0.905,4");
    mold("part_g", "5");
    presses("shot_ps_g", "100", "200");
    // 1.4 x 100 g x 0.905 / 1.05 / 20 g x 30 s = 3.02 min, and 6.03 min
    assertThat(option("P1").notes()).isEmpty();
    assertThat(option("P2").notes())
        .contains("estimate: melt stays 6 min in the barrel, 4 min at most");
  }

  @Test
  void sizeOfTheMoldIsChecked() {
    mold("length_mm,width_mm,height_mm", "400,300,250");
    presses(
        "tie_bar_x_mm,tie_bar_y_mm,mold_min_mm,mold_max_mm", "310,410,200,400", "390,390,200,400");
    assertThat(plant.presses()).containsExactly("P1");
    presses(
        "tie_bar_x_mm,tie_bar_y_mm,mold_min_mm,mold_max_mm", "410,410,260,400", "410,410,100,240");
    assertThat(plant.unplaced().reason())
        .contains("P1 mold height 250 mm, takes 260 up to 400 mm")
        .contains("P2 mold height 250 mm, takes 100 up to 240 mm");
  }

  @Test
  void openingHoldsTheStud() {
    mold("opening_mm", "100");
    presses("opening_mm", "175", "214");
    plant.file("inserts.csv", "insert,kind,thread,length_mm", "S40,stud,M8,40");
    assertThat(plant.presses()).containsExactly("P1", "P2");
    plant.file("orders.csv", "order,item,quantity,due,resin,insert", "1,M1,100,2026-12-02,PP,S40");
    assertThat(plant.unplaced().reason())
        .contains("P1 opens 175 mm of 215 mm needed")
        .contains("P2 opens 214 mm of 215 mm needed");
  }

  @Test
  void barrelMustSuitTheResinWhateverTheRecordSays() {
    mold("runs_on", "P1:proven|P2:proven");
    presses("barrel", "standard", "wear-resistant");
    plant.file("resins.csv", "resin,barrel", "PP,wear-resistant");
    assertThat(plant.presses()).containsExactly("P2");
    plant.file("resins.csv", "resin,barrel", "PP,standard");
    assertThat(plant.presses()).containsExactly("P1", "P2");
    plant.file("resins.csv", "resin,barrel", "PP,thermoset");
    assertThat(plant.unplaced().reason())
        .contains("P1 standard barrel, thermoset needed")
        .contains("P2 wear-resistant barrel, thermoset needed");
  }

  @Test
  void whatIsNotKnownIsNotCheckedAndSaid() {
    assertThat(plant.notChecked())
        .containsEntry("clamp force: the mold's projected area is not known", 1)
        .containsEntry("shot against barrel: the press's is not known", 1)
        .containsEntry("cycles are estimates, not recorded ones", 1)
        .containsEntry("whether setters are there for the changes", 1);
    mold("runs_on", "P1:proven");
    assertThat(plant.notChecked().keySet())
        .noneMatch(what -> what.startsWith("clamp") || what.startsWith("shot"));
  }

  @Test
  void moldThatNoPressTakesIsWarnedOf() {
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on",
        "M1,M1,4,30,",
        "M2,M2,4,30,P1:never|P2:never");
    assertThat(plant.findings())
        .contains(
            "molds.csv:3: no press takes mold M2: P1 never, by its record, P2 never, by its record");
  }

  @Test
  void manyPressesWithTheSameObjectionAreCounted() {
    mold("orientation", "vertical");
    plant.file(
        "presses.csv",
        "press,orientation,clamp_kn",
        "P1,horizontal,900",
        "P2,horizontal,900",
        "P3,horizontal,900",
        "P4,horizontal,900",
        "P5,horizontal,900",
        "P6,horizontal,900");
    assertThat(plant.unplaced().reason())
        .isEqualTo("no press takes mold M1: P1, P2, P3, P4 and 2 more horizontal, vertical needed");
    assertThat(List.of(plant.unplaced().pieces())).containsExactly(100);
  }
}
