package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Bringing;
import pressweek.data.problem.Declaration;
import pressweek.data.problem.Kitting;
import pressweek.data.problem.LotPaper;
import pressweek.data.problem.NamedPair;
import pressweek.data.problem.Recipe;
import pressweek.data.problem.Tip;

class KittingBuilderTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file(
        "inserts.csv", "insert,kind,thread,tip", "I1,stud,M8,T1", "I2,stud,M8,", "I3,stud,M8,T3");
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,insert",
        "1,M1,100,2026-12-02,PP,BLK,I1");
  }

  private Kitting kitting() {
    return plant.problem().kitting().orElseThrow();
  }

  @Test
  void pairsThatThePlantNamesAreKept() {
    plant.file("lookalikes.csv", "a,b,reason", "I1,I2,the tip is white", "I3,I2,");
    assertThat(kitting().lookAlikes())
        .containsExactly(
            new NamedPair("I1", "I2", "the tip is white"), new NamedPair("I3", "I2", ""));
  }

  @Test
  void pairOfAnInsertThatIsNotThereIsWarnedOf() {
    plant.file("lookalikes.csv", "a,b,reason", "I1,I9,");
    assertThat(plant.findings())
        .anyMatch(f -> f.startsWith("lookalikes.csv:2: b \"I9\" is not in inserts.csv"));
    assertThat(plant.week().problem()).isPresent();
  }

  @Test
  void pairOfOneInsertAndPairTwiceAreFaults() {
    plant.file("lookalikes.csv", "a,b", "I1,I1", "I1,I2", "I2,I1");
    assertThat(plant.week().errors())
        .extracting(Object::toString)
        .anyMatch(f -> f.startsWith("lookalikes.csv:2: b \"I1\" is the same insert as a"))
        .anyMatch(f -> f.startsWith("lookalikes.csv:4: ") && f.contains("I1"));
  }

  @Test
  void declarationsSayWhereTheyStandAndHowLongTheyCount() {
    plant.file(
        "records.csv",
        "what,for,date,expires,exemption,certificate",
        "PP,Food,2026-02-10,2026-12-24T00:00Z,6(c),letter 7");
    int expires = PlantFolder.NOW + 24 * 24 * 60;
    assertThat(kitting().declarations())
        .containsExactly(
            new Declaration(
                "records.csv:2",
                "PP",
                "food",
                Optional.of(LocalDate.of(2026, 2, 10)),
                OptionalInt.of(expires),
                "6(c)",
                "letter 7"));
  }

  @Test
  void tipsAreThoseOfInsertsThatAreTakenAndOfItemsThatAreMade() {
    plant.file("bom.csv", "item,component,kind", "M1,T7,tip", "M9,T8,tip", "M1,C1,carton");
    assertThat(kitting().tips()).containsExactly(new Tip("I1", "T1"), new Tip("M1", "T7"));
  }

  @Test
  void resinLotsPapersRecipesAndDryersAreKept() {
    plant.file("resins.csv", "resin,grade", "PP,Grade 5");
    plant.file("colours.csv", "colour,masterbatch,let_down_pct", "BLK,MB-1,4", "NAT,,");
    plant.file("dryers.csv", "dryer,hopper_l,feeds", "D1,50,P2");
    plant.file(
        "lots.csv",
        "what,lot,on_hand,weight_kg,certificate",
        "I1,L1,500,,plating 12",
        "PP,R1,,300,",
        "MB-1,B1,,20,",
        "Grade 5,R2,,10,");
    Kitting kitting = kitting();
    assertThat(kitting.lotPapers()).containsExactly(new LotPaper("I1", "L1", "plating 12"));
    assertThat(kitting.resinLots()).extracting("id").containsExactly("R1", "B1", "R2");
    assertThat(kitting.recipes())
        .containsExactly(new Recipe("", "BLK", "MB-1", OptionalDouble.of(4)));
    assertThat(kitting.dryers()).containsExactly(java.util.Map.entry("P2", "D1"));
  }

  @Test
  void insertsAreBroughtByPiecesUnlessThePlantSaysOtherwise() {
    assertThat(kitting().bringing().by()).isEqualTo(Bringing.By.PIECES);
    plant.file(
        "plant.json",
        "{\"plan_start\": \"2026-11-30T00:00Z\", \"bring\": {\"by\": \"cartons\", \"carton_pieces\":"
            + " 250}}");
    assertThat(kitting().bringing()).isEqualTo(new Bringing(Bringing.By.CARTONS, 250));
    plant.file(
        "plant.json", "{\"plan_start\": \"2026-11-30T00:00Z\", \"bring\": {\"by\": \"kg\"}}");
    assertThat(plant.week().errors())
        .extracting(Object::toString)
        .anyMatch(f -> f.contains("expected \"pieces\", \"cartons\" or \"bins\""));
  }
}
