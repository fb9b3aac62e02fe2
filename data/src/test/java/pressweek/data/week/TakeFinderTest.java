package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Component;
import pressweek.data.problem.Job;
import pressweek.data.problem.Lot;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Take;

/**
 * 100 good pieces from four cavities at 3 % scrap are 26 shots (100 / 0.97 / 4 = 25.8), 104 parts;
 * 10 start-up shots are 40 parts; 5 samples; 0.5 % of inserts and tips are lost.
 */
class TakeFinderTest {
  @TempDir private Path path;
  private PlantFolder plant;

  @BeforeEach
  void aStudWithATip() {
    plant = new PlantFolder(path);
    plant.file("inserts.csv", "insert,kind", "I1,stud");
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,insert",
        "1,M1,100,2026-12-02,PP,BLK,I1");
    plant.file(
        "bom.csv",
        "item,component,pieces,per,kind",
        "M1,T1,2,,tip",
        "M1,C1,1,48,carton",
        "M1,L1,2,48,label",
        "M1,L2,1,,label");
  }

  private List<Take> takes() {
    return plant.job().options().get(0).making().takes();
  }

  private static Take take(Component kind, String id, int pieces, int startup, int reserved) {
    return new Take(kind, id, pieces, startup, reserved);
  }

  @Test
  void tipsGoIntoEveryPartAndCartonsRoundGoodOnes() {
    assertThat(takes())
        .containsExactly(
            // 104 / 0.995 = 104.5, and 5 samples
            new Take("I1", 110, 40, 0),
            // 208 / 0.995 = 209.05, and 10 in samples
            take(Component.TIP, "T1", 220, 80, 0),
            // 100 / 48, the third carton not full; two labels on each
            take(Component.CARTON, "C1", 3, 0, 0),
            take(Component.LABEL, "L1", 6, 0, 0),
            take(Component.LABEL, "L2", 100, 0, 0));
  }

  @Test
  void dummyPlugsSaveTipsAsWell() {
    plant.file(
        "molds.csv", "mold,makes,live_cavities,cycle_s,runs_on,dummy_plugs", "M1,M1,4,28,,yes");
    assertThat(takes()).extracting(Take::startupPieces).containsOnly(0);
  }

  @Test
  void componentsMayBeReserved() {
    plant.file("lots.csv", "what,lot,on_hand,reserved_for", "C1,A,2,1/1", "C1,B,9,", "I1,C,999,");
    assertThat(takes()).contains(take(Component.CARTON, "C1", 1, 0, 2));
  }

  @Test
  void aReservedLotServesTheStartAsWell() {
    plant.file("lots.csv", "what,lot,on_hand,reserved_for", "I1,A,140,1", "I1,B,999,");
    assertThat(takes()).contains(new Take("I1", 0, 10, 110).withReservedStartup(30));
  }

  @Test
  void aRunInProgressTakesInsertsOnly() {
    plant.file("running.csv", "press,order,mold,good_made,inserts_at_press", "P1,1,M1,0,100");
    assertThat(takes()).containsExactly(new Take("I1", 10, 0, 0));
  }

  @Test
  void plasticIsTakenInGramsWhereTheStoreListsIt() {
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,part_g,runner_g",
        "M1,M1,4,30,,11.5,4");
    plant.file("colours.csv", "colour,masterbatch,let_down_pct", "BLK,MB-BLK,25:1");
    plant.file(
        "lots.csv", "what,lot,on_hand,weight_kg", "PP,A,,800", "MB-BLK,B,,12.5", "I1,C,999,");
    // 26 shots of 50 g are 1300 g: a twenty-sixth of it is masterbatch; 10 shots of the start 500 g
    assertThat(takes())
        .contains(
            take(Component.RESIN, "PP", 1250, 481, 0),
            take(Component.MASTERBATCH, "MB-BLK", 50, 20, 0));
    Stock stock = plant.problem().materials().stock();
    assertThat(stock.lots()).extracting(Lot::onHand).containsExactly(800_000, 12_500, 999);
    assertThat(stock.counts(Component.RESIN, "PP")).isTrue();
    assertThat(stock.counts(Component.CARTON, "C1")).isFalse();
  }

  @Test
  void whatIsNotCountedIsSaid() {
    plant.file("lots.csv", "what,lot,on_hand,weight_kg", "I1,C,999,", "PP,A,,800");
    assertThat(plant.notChecked())
        .containsEntry(
            "whether tips, cartons and labels are in the house in time: some have neither lot nor"
                + " receipt",
            1)
        .containsEntry(
            "what resin and masterbatch a run takes: a part weight or let-down is not known", 1)
        .doesNotContainKey(
            "whether resin and masterbatch are in the house in time: some have neither lot nor"
                + " receipt");
    assertThat(takes()).extracting(Take::component).doesNotContain(Component.RESIN);
  }

  @Test
  void aCountedComponentWithoutAUsableLotIsWarnedOf() {
    plant.file("lots.csv", "what,lot,on_hand,status", "C1,A,900,held", "I1,C,999,");
    assertThat(plant.findings())
        .contains(
            "lots.csv:2: carton C1 has no usable lot and no receipt; order lines that need it: 1");
  }

  @Test
  void whatTakesTheSamePieceTwiceTakesItOnce() {
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,insert",
        "1,M1,100,2026-12-02,PP,BLK,I1|I1*2");
    // 110, and 208 / 0.995 = 209.05 with 10 in samples
    assertThat(takes()).contains(new Take("I1", 330, 120, 0)).hasSize(5);
  }

  @Test
  void lotsOfATracedRunAreKeptApart() {
    assertThat(plant.job().traced()).isFalse();
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,insert,needs",
        "1,M1,100,2026-12-02,PP,BLK,I1,reach");
    plant.file("records.csv", "what,for", "PP,reach", "BLK,reach", "I1,reach", "T1,reach");
    Job job = plant.job();
    assertThat(job.traced()).isTrue();
    assertThat(job.foodGrade()).isFalse();
  }
}
