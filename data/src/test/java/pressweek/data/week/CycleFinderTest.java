package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Option;
import pressweek.data.problem.Take;

class CycleFinderTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file(
        "presses.csv",
        "press,orientation,clamp_kn,table,lower_halves",
        "P1,horizontal,900,fixed,1",
        "P2,vertical,600,rotary,2");
    plant.file(
        "molds.csv", "mold,makes,live_cavities,cycle_s,runs_on,hand_load", "M1,M1,4,28,,yes");
    plant.file("inserts.csv", "insert,kind,thread,load_s", "I1,blind,M8,5", "I2,stud,M8,");
    insert("I1");
  }

  private void insert(String insert) {
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,insert",
        "1,M1,100,2026-12-02,PP,BLK," + insert);
  }

  private Option option(String press) {
    return plant.job().options().stream()
        .filter(option -> option.press().equals(press))
        .findFirst()
        .orElseThrow();
  }

  /** 4 x 5 s loading and 5 s unloading beside 28 s of molding; 2 s for the table. */
  @Test
  void handLoadingOverlapsOnlyWithTwoLowerHalves() {
    assertThat(option("P1").pace().cycleMillis()).isEqualTo(53_000);
    assertThat(option("P1").pace().basis())
        .isEqualTo("estimate: molds.csv cycle_s 28, hands 25 s after it");
    assertThat(option("P2").pace().cycleMillis()).isEqualTo(30_000);
    assertThat(option("P2").pace().operatorThousandths()).isEqualTo(1_000);
  }

  /** Stations of their own for 5 s of unloading and 20 s of loading, if there are two people. */
  @Test
  void threeLowerHalvesNeedAPersonAStation() {
    plant.file("presses.csv", "press,orientation,clamp_kn,lower_halves", "P2,vertical,600,3");
    plant.file(
        "molds.csv", "mold,makes,live_cavities,cycle_s,runs_on,hand_load", "M1,M1,4,22,,yes");
    assertThat(option("P2").pace().cycleMillis()).isEqualTo(27_000);
    plant.file(
        "plant.json",
        "{\"plan_start\": \"2026-11-30T00:00Z\", \"run\": {\"operators_hand_load\": 2.0}}");
    assertThat(option("P2").pace().cycleMillis()).isEqualTo(24_000);
  }

  @Test
  void insertsWithoutALoadingTimeTakeThePlants() {
    insert("I1*2|I2"); // 4 x (2 x 5 + 3) + 5 = 57 s
    assertThat(option("P1").pace().cycleMillis()).isEqualTo(85_000);
    assertThat(option("P2").pace().cycleMillis()).isEqualTo(59_000);
  }

  @Test
  void machineLoadedMoldRunsAtItsOwnCycle() {
    plant.file("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on,hand_load", "M1,M1,4,28,,no");
    assertThat(option("P1").pace().cycleMillis()).isEqualTo(28_000);
    assertThat(option("P2").pace().cycleMillis()).isEqualTo(28_000);
    assertThat(option("P2").pace().operatorThousandths()).isEqualTo(250);
  }

  @Test
  void recordedCycleThatSaysMostCounts() {
    plant.file(
        "standards.csv",
        "mold,resin,press,cycle_s,scrap_pct,startup_shots,operators",
        "M1,,,60,,,",
        "M1,PP,,59,,,",
        "M1,,vertical,58,,,",
        "M1,PP,vertical,57,,,",
        "M1,,P2,56,20,4,0.4",
        "M1,ABS,P2,55,,,");
    assertThat(option("P1").pace().cycleMillis()).isEqualTo(59_000);
    assertThat(option("P1").pace().basis()).isEqualTo("standards.csv:3");
    Option second = option("P2");
    assertThat(second.pace().cycleMillis()).isEqualTo(56_000);
    assertThat(second.pace().basis()).isEqualTo("standards.csv:6");
    assertThat(second.pace().operatorThousandths()).isEqualTo(400);
    // 100 / 0.8 / 4 = 31.25, rounded up
    assertThat(second.making().shots()).isEqualTo(32);
    assertThat(second.making().startupShots()).isEqualTo(4);
    // 4 shots of 56 s at 85 % are 4.4 min
    assertThat(second.pace().startupMin()).isEqualTo(5);
    // 32 x 4 / 0.995 = 128.6, and 5 samples; 4 x 4 at the start
    assertThat(second.making().takes()).containsExactly(new Take("I1", 134, 16, 0));
    assertThat(plant.notChecked()).doesNotContainKey("cycles are estimates, not recorded ones");
  }

  @Test
  void dummyPlugsSaveTheInsertsOfTheStart() {
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,dummy_plugs,part_g,runner_g",
        "M1,M1,4,28,,yes,20.1,3");
    Option option = option("P1");
    assertThat(option.making().takes()).containsExactly(new Take("I1", 110, 0, 0));
    // 10 shots of 4 x 20.1 + 3 g
    assertThat(option.making().startupGrams()).isEqualTo(834);
  }

  @Test
  void moldWithAStandardForOneKindOfPressOnlyRunsThere() {
    plant.file("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "M1,M1,4,,");
    plant.file("standards.csv", "mold,press,cycle_s", "M1,vertical,40");
    assertThat(plant.presses()).containsExactly("P2");
  }

  @Test
  void runThatWouldTakeAYearIsRefused() {
    plant.file(
        "orders.csv", "order,item,quantity,due,resin,insert", "1,M1,10000000,2026-12-02,PP,I1");
    assertThat(plant.unplaced().reason()).contains("the run would take").contains("days");
  }

  @Test
  void reservedPiecesAreNotTakenFromFreeStock() {
    plant.file(
        "lots.csv",
        "what,lot,on_hand,expires,status,reserved_for",
        "I1,L1,30,,usable,1/1",
        "I1,L2,40,,usable,1",
        "I1,L3,50,2026-12-01,usable,1",
        "I1,L4,60,,held,1",
        "I1,L5,70,,usable,");
    assertThat(option("P1").making().takes()).containsExactly(new Take("I1", 40, 40, 70));
    assertThat(plant.problem().materials().stock().checked()).isTrue();
    assertThat(plant.problem().materials().stock().lots()).hasSize(5);
  }

  @Test
  void linesOfAnOrderDoNotCountOnTheSameReservedPieces() {
    plant.file(
        "orders.csv",
        "order,line,item,quantity,due,resin,insert",
        "1,1,M1,100,2026-12-02,PP,I1",
        "1,2,M1,100,2026-12-02,PP,I1");
    plant.file("lots.csv", "what,lot,on_hand,reserved_for", "I1,L1,150,1");
    assertThat(plant.problem().jobs())
        .extracting(job -> job.options().get(0).making().takes().get(0).reservedPieces())
        // 110 for the run and 40 for its start, so that nothing is left for the other line
        .containsExactly(110, 0);
  }

  @Test
  void insertThatNobodyStocksIsWarnedOf() {
    plant.file("lots.csv", "what,lot,on_hand", "I2,L1,150");
    assertThat(plant.findings())
        .contains(
            "inserts.csv:2: insert I1 has no usable lot and no receipt; order lines that need it: 1");
  }
}
