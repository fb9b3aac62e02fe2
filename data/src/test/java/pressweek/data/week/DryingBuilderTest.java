package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Drying;
import pressweek.data.problem.Drying.Dried;
import pressweek.data.problem.Drying.Feed;
import pressweek.data.problem.Preparation;

/** What is dried, and where. */
class DryingBuilderTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file("resins.csv", "resin,dry_h,dry_c", "PP,0,80", "ABS,1.1,80", "PA,4,80");
    plant.file("colours.csv", "resin,colour,masterbatch,let_down_pct", ",BLK,MB-B,3", "PA,RED,,0");
    plant.file("dryers.csv", "dryer,hopper_l,feeds", "D2,40,P2", "D1,40,P2");
    plant.file(
        "presses.csv",
        "press,orientation,clamp_kn,dryer",
        "P1,horizontal,900,D1",
        "P2,vertical,600,D1");
    orders("ABS,BLK");
  }

  private void orders(String... materials) {
    String[] lines = new String[materials.length + 1];
    lines[0] = "order,item,quantity,due,resin,colour";
    for (int i = 0; i < materials.length; i++) {
      lines[i + 1] = (i + 1) + ",M1,100,2026-12-02," + materials[i];
    }
    plant.file("orders.csv", lines);
  }

  private Drying drying() {
    return plant.problem().arranged().drying();
  }

  @Test
  void severalDryersMayFeedAPress() {
    assertThat(drying().dryers())
        .containsExactly(new Feed("D2", List.of("P2")), new Feed("D1", List.of("P2", "P1")));
    assertThat(drying().cleanMin()).isEqualTo(20);
    Preparation preparation = plant.problem().materials().preparation().orElseThrow();
    assertThat(preparation.dryer("P2").orElseThrow().id()).isEqualTo("D2");
    assertThat(plant.problem().kitting().orElseThrow().dryers())
        .containsEntry("P1", "D1")
        .containsEntry("P2", "D2");
  }

  @Test
  void contentIsTheResinWhereTheColourIsDosed() {
    orders("ABS,BLK", "PP,BLK", "PA,RED", "PA,", "ABS,BLK", "ABS,GRN");
    assertThat(drying().materials())
        .containsExactly(
            new Dried("ABS", "BLK", "ABS", 66),
            new Dried("PA", "RED", "PA RED", 240),
            new Dried("PA", "", "PA", 240),
            new Dried("ABS", "GRN", "ABS GRN", 66));
  }

  @Test
  void materialInABarrelIsAmongThem() {
    plant.file("running.csv", "press,mold,resin,colour", "P1,M1,PA,BLK");
    assertThat(drying().materials())
        .containsExactly(new Dried("ABS", "BLK", "ABS", 66), new Dried("PA", "BLK", "PA", 240));
  }

  @Test
  void withoutDryersOrByThePlantsWishDryingIsNotPlanned() {
    String gap = "whether resins are dry in time; dryers are not planned";
    assertThat(plant.notChecked()).doesNotContainKey(gap);
    plant.file(
        "plant.json", "{\"plan_start\": \"2026-11-30T00:00Z\", \"drying\": {\"planned\": false}}");
    assertThat(drying()).isEqualTo(Drying.NONE);
    assertThat(plant.notChecked()).containsEntry(gap, 1);
  }

  @Test
  void pressWithoutADryerIsNotChecked() {
    String gap = "whether resins are dry in time on presses that no dryer feeds";
    assertThat(plant.notChecked()).doesNotContainKey(gap);
    plant.file("presses.csv", "press,orientation,clamp_kn", "P1,horizontal,900", "P2,vertical,600");
    assertThat(plant.notChecked()).containsEntry(gap, 1);
    orders("PP,BLK");
    assertThat(plant.notChecked()).doesNotContainKey(gap);
  }
}
