package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;
import pressweek.data.problem.Origin;
import pressweek.data.problem.Take;

class ItemReaderTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() throws IOException {
    plant = new PlantFolder(temp);
    plant.file("guide.json", Files.readString(Path.of("../examples/quillback-week/guide.json")));
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,hub,insert_kinds,threads,tooling",
        "ML,LV90,4,30,,,,,M8=K8|M10=K10",
        "MT,TH100,2,40,,,,,");
    plant.file(
        "inserts.csv",
        "insert,kind,thread,length_mm,material,finish,passivation",
        "B10A2,blind,M10x1.5,,A2,,",
        "B10Z,blind,M10,,steel,zinc,trivalent",
        "B10Y,blind,M10,,steel,zinc,hexavalent",
        "B8Z,blind,M8,,steel,zinc,trivalent",
        "S8-25,stud,M8x1.25,25,steel,zinc,trivalent",
        "S8-30,stud,M8x1.25,30,steel,zinc,trivalent",
        "S6-20,stud,M6,20,steel,zinc,trivalent",
        "B10BX,blind,M10,,steel,black oxide,none");
    code("LV90/M10-B/PP-SGR/ZN");
  }

  private void code(String code) {
    plant.file("orders.csv", "order,item,quantity,due", "1," + code + ",100,2026-12-02");
  }

  private String value(String name) {
    return plant.job().item().value(name).orElse("");
  }

  private List<Take> takes() {
    return plant.job().options().get(0).making().takes();
  }

  @Test
  void codeLeadsToMoldToolingAndInsert() {
    Job job = plant.job();
    assertThat(job.resin()).isEqualTo("PP");
    assertThat(job.colour()).isEqualTo("SGR");
    assertThat(job.options().get(0).mold()).isEqualTo("ML");
    assertThat(job.options().get(0).tooling()).isEqualTo("K10");
    assertThat(value(Item.INSERT)).isEqualTo("B10Z");
    assertThat(takes()).extracting(Take::insert).containsExactly("B10Z");
  }

  @Test
  void lengthOfAStudIsPartOfTheMatch() {
    code("LV90/M8-S30/PP-SGR/ZN");
    assertThat(value(Item.INSERT)).isEqualTo("S8-30");
    code("LV90/M8-S35/PP-SGR/ZN");
    assertThat(plant.unplaced().reason())
        .isEqualTo(
            "no insert part is a stud M8x1.25, 35 mm, steel, zinc, trivalent; nearest: S8-25 has"
                + " length 25 mm; S8-30 has length 30 mm");
    assertThat(plant.unplaced().cure()).contains("bom.csv");
  }

  @Test
  void insertThatSaysNoMoreThanTheItemIsTakenBeforeOthers() {
    plant.file(
        "inserts.csv",
        "insert,kind,thread,material,finish",
        "B10A2,blind,M10,A2,",
        "B10A2P,blind,M10,A2,polished");
    code("LV90/M10-B/PP-SGR/A2");
    assertThat(value(Item.INSERT)).isEqualTo("B10A2");
  }

  @Test
  void severalInsertsThatFitAreNeverGuessedBetween() {
    plant.file(
        "inserts.csv",
        "insert,kind,thread,material,finish",
        "B10A2S,blind,M10,A2,satin",
        "B10A2P,blind,M10,A2,polished");
    code("LV90/M10-B/PP-SGR/A2");
    assertThat(plant.unplaced().reason())
        .isEqualTo("2 insert parts are a blind M10x1.5, A2: B10A2S, B10A2P");
  }

  @Test
  void handleWithANutAtEachEndTakesTwoAPart() {
    code("TH100/M10-B/PP-SGR/ZN");
    assertThat(value(Item.INSERT)).isEqualTo("B10Z*2");
    // 52 shots of 2, 2 pieces each, 0.5 % loss, and 5 samples
    assertThat(takes()).containsExactly(new Take("B10Z", 220, 40, 0));
  }

  @Test
  void handleWithANutAndAStudTakesBoth() {
    code("TH100/M10-B+M6-S20/PP-SGR/ZN");
    assertThat(value(Item.INSERT)).isEqualTo("B10Z|S6-20");
    assertThat(takes()).extracting(Take::insert).containsExactly("B10Z", "S6-20");
  }

  @Test
  void orderLineOverrulesTheCode() {
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,insert,mold",
        "1,LV90/M10-B/PP-SGR/ZN,100,2026-12-02,ABS,BLK,B10BX*2,MT");
    Job job = plant.job();
    assertThat(job.resin()).isEqualTo("ABS");
    assertThat(job.colour()).isEqualTo("BLK");
    assertThat(job.options().get(0).mold()).isEqualTo("MT");
    assertThat(job.item().attributes())
        .contains(
            new Attribute(Item.RESIN, "ABS", Origin.ORDER, "orders.csv:2 overrules"),
            new Attribute(Item.INSERT, "B10BX*2", Origin.ORDER, "orders.csv:2 overrules"),
            new Attribute(Item.FINISH, "black oxide", Origin.RECORD, "inserts.csv:9 insert B10BX"));
  }

  @Test
  void billOfMaterialsReplacesTheInsertOfTheCode() {
    plant.file(
        "bom.csv",
        "item,component,pieces,kind",
        "lv90/m10-b/pp-sgr/zn,B10Y,3,insert",
        "LV90/M10-B/PP-SGR/ZN,BOX,1,carton");
    assertThat(value(Item.INSERT)).isEqualTo("B10Y*3");
    assertThat(value("passivation")).isEqualTo("hexavalent");
  }

  @Test
  void insertThatIsNotAmongTheInsertsLeavesTheLineUnplaced() {
    plant.file(
        "orders.csv",
        "order,item,quantity,due,insert",
        "1,LV90/M10-B/PP-SGR/ZN,100,2026-12-02,B10A3");
    assertThat(plant.unplaced().reason())
        .startsWith("insert \"B10A3\" is not in inserts.csv; nearest: B10A2");
  }

  @Test
  void codeThatCannotBeReadIsUnplacedWithThePlace() {
    code("LV90/M10-B/PP-SRG/ZN");
    assertThat(plant.unplaced().reason())
        .startsWith("code \"LV90/M10-B/PP-SRG/ZN\": unknown colour \"SRG\" at position 15");
  }

  @Test
  void codeThatCannotBeReadIsNotNeededWhenTheOrderSaysAll() {
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,insert,mold",
        "1,ODD,100,2026-12-02,PP,BLK,B10Z,ML");
    assertThat(plant.job().options()).hasSize(2);
  }

  @Test
  void withoutAListOfInsertsTheirStockCannotBeCounted() {
    plant.file("inserts.csv", "insert,kind");
    code("LV90/M10-B/PP-SGR/ZN");
    assertThat(takes()).isEmpty();
    assertThat(plant.notChecked()).containsEntry("which insert part an item takes", 1);
  }

  @Test
  void moldTakesOnlyItsHubKindsAndThreads() {
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,hub,insert_kinds,threads",
        "A,LV90,4,30,,solid,,",
        "B,LV90,4,30,,,through|stud,",
        "C,LV90,4,30,,cored,blind,M8|M12",
        "D,LV90,4,30,,cored,blind,M8|M10");
    assertThat(plant.job().options()).extracting("mold").containsOnly("D");
    code("LV90-F/M10-B/PP-SGR/ZN");
    assertThat(plant.job().options()).extracting("mold").containsOnly("A");
    code("LV90/M8-B/PP-SGR/ZN");
    assertThat(plant.job().options()).extracting("mold").containsOnly("C", "D");
    plant.file(
        "molds.csv",
        "mold,makes,live_cavities,cycle_s,runs_on,hub,insert_kinds,threads",
        "A,LV90,4,30,,solid,,",
        "B,LV90,4,30,,,through|stud,",
        "C,LV90,4,30,,cored,blind,M12");
    assertThat(plant.unplaced().reason())
        .isEqualTo(
            "no mold of head LV90 fits: A has a solid hub, not cored, B takes through|stud, not"
                + " blind, C takes M12, not M8");
  }

  @Test
  void headWithoutAMoldIsNamed() {
    code("LV110/M10-B/PP-SGR/ZN");
    assertThat(plant.unplaced().reason()).isEqualTo("no mold makes head LV110");
  }

  @Test
  void moldMayMakeAWholeItemCode() {
    plant.file(
        "molds.csv", "mold,makes,live_cavities,cycle_s,runs_on", "X,lv90/m10-b/pp-sgr/zn,4,30,");
    assertThat(plant.job().options()).extracting("mold").containsOnly("X");
  }
}
