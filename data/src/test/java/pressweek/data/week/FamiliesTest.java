package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Option;
import pressweek.data.problem.Surplus;
import pressweek.data.problem.Take;

/** Molds that make several items in each shot. */
class FamiliesTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour",
        "1,A,97,2026-12-02,PP,BLK",
        "2,B,97,2026-12-02,PP,BLK");
    plant.file("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "MF,,3,30,", "MB,B,4,30,");
    plant.file("family.csv", "mold,item,cavities", "MF,A,1", "MF,B,2");
  }

  private List<Option> options(int job) {
    return plant.problem().jobs().get(job).options();
  }

  @Test
  void itemRunsInAFamilyMoldWithItsOwnCavities() {
    assertThat(options(0)).extracting(Option::mold).containsOnly("MF");
    assertThat(options(0).get(0).making().liveCavities()).isEqualTo(1);
    assertThat(options(0).get(0).making().shots()).isEqualTo(100);
    assertThat(options(1)).extracting(Option::mold).contains("MF", "MB");
    assertThat(options(1))
        .filteredOn(o -> o.mold().equals("MF"))
        .allSatisfy(o -> assertThat(o.making().liveCavities()).isEqualTo(2));
    assertThat(options(1))
        .filteredOn(o -> o.mold().equals("MB"))
        .allSatisfy(o -> assertThat(o.making().liveCavities()).isEqualTo(4));
  }

  @Test
  void everyRowIsSurplusOfRunsForTheOthers() {
    assertThat(plant.problem().arranged().surplus())
        .containsExactly(new Surplus("MF", "A", 1), new Surplus("MF", "B", 2));
    plant.file("family.csv", "mold,item,cavities");
    plant.file("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "MF,A|B,3,30,");
    assertThat(plant.problem().arranged().surplus()).isEmpty();
  }

  @Test
  void insertsOfWhatIsMadeBesideAreTaken() {
    plant.file(
        "bom.csv", "item,component,pieces,kind", "A,I1,1,insert", "B,I1,1,insert", "B,I2,1,insert");
    plant.file("inserts.csv", "insert,kind,thread", "I1,stud,M8", "I2,stud,M6");
    // 100 shots of one A and two B: 101 of A with 5 samples, 202 of B; 10 start-up shots
    assertThat(options(0).get(0).making().takes())
        .containsExactly(new Take("I1", 101 + 5 + 202, 30, 0), new Take("I2", 202, 20, 0));
  }

  @Test
  void itemThatCannotBeReadIsAnError() throws IOException {
    plant.file("guide.json", Files.readString(Path.of("../examples/quillback-week/guide.json")));
    plant.file(
        "family.csv",
        "mold,item,cavities",
        "MF,KB25/M6-B/ABS-BLK/ZN,1",
        "MF,kb25/m6-b/abs-blk/zn,1",
        "MF,KB32/M6-Q/ABS-BLK/ZN,1",
        "MF,KB32/M6-B/PP-RED/ZN,1");
    assertThat(plant.week().errors())
        .extracting(Object::toString)
        .hasSizeGreaterThanOrEqualTo(2)
        .anyMatch(e -> e.startsWith("family.csv:4: ") && e.contains("M6-Q"))
        .anyMatch(e -> e.startsWith("family.csv:3: item") && e.contains("is also in line 2"));
  }

  @Test
  void itemsOfOtherResinsAreNoted() throws IOException {
    plant.file("guide.json", Files.readString(Path.of("../examples/quillback-week/guide.json")));
    plant.file(
        "family.csv",
        "mold,item,cavities",
        "MF,KB25/M6-B/ABS-BLK/ZN,1",
        "MF,KB32/M6-B/PP-SGR/ZN,1",
        "MF,KB40/M8-B/ABS-BLK/ZN,1");
    assertThat(plant.findings())
        .filteredOn(f -> f.startsWith("family.csv"))
        .containsExactly(
            "family.csv:3: item \"KB32/M6-B/PP-SGR/ZN\" says resin PP, not ABS and colour SGR, not BLK as in line 2; a run of mold MF is of one resin and colour");
  }
}
