package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.problem.Job;

class DeclarationsTest {
  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file(
        "presses.csv",
        "press,orientation,clamp_kn,food",
        "P1,horizontal,900,never",
        "P2,vertical,600,open",
        "P3,vertical,600,kept",
        "P4,vertical,600,only");
    plant.file("resins.csv", "resin,grade", "PP,Moplen-like 5");
    plant.file(
        "inserts.csv",
        "insert,kind,thread,passivation,tip",
        "I1,blind,M8,,",
        "I2,stud,M8,hexavalent,T9",
        "I3,stud,M8,trivalent,T9",
        "I4,through,M8,none,");
    needs("food", "I1");
    records("PP,food,", "PP:BLK,food,", "I1,food,");
  }

  private void needs(String needs, String insert) {
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,colour,needs,insert",
        "1,M1,100,2026-12-02,PP,BLK," + needs + "," + insert);
  }

  private void records(String... rows) {
    String[] lines = new String[rows.length + 1];
    lines[0] = "what,for,expires";
    System.arraycopy(rows, 0, lines, 1, rows.length);
    plant.file("records.csv", lines);
  }

  @Test
  void declaredOrderRunsOnFoodPressesOnly() {
    Job job = plant.job();
    assertThat(job.foodGrade()).isTrue();
    assertThat(job.options()).extracting("press").containsExactlyInAnyOrder("P2", "P3", "P4");
  }

  @Test
  void orderWithoutTheNeedKeepsOffFoodOnlyPresses() {
    needs("", "I1");
    Job job = plant.job();
    assertThat(job.foodGrade()).isFalse();
    assertThat(job.options()).extracting("press").containsExactlyInAnyOrder("P1", "P2", "P3");
  }

  @Test
  void missingRecordsAreNamedWithWhomToAsk() {
    records("I1,food,");
    assertThat(plant.unplaced().reason())
        .isEqualTo("no food record for resin PP Moplen-like 5, colour BLK");
    assertThat(plant.unplaced().cure())
        .isEqualTo(
            "ask the supplier of resin PP for a food-contact declaration (21 CFR 177.1520, or what"
                + " rules in your market); ask the supplier of colour BLK for a food-contact"
                + " declaration of its colourants, then add to records.csv (what,for): PP,food;"
                + " BLK,food");
  }

  @Test
  void recordOfTheGradeAndOfTheColourInAllResinsCount() {
    records("Moplen-like 5,food,", "BLK,food,", "I1,food,");
    assertThat(plant.job().foodGrade()).isTrue();
  }

  @Test
  void recordOfAnotherResinWithTheColourDoesNotCount() {
    records("PP,food,", "ABS:BLK,food,", "I1,food,");
    assertThat(plant.unplaced().reason()).isEqualTo("no food record for colour BLK");
  }

  @Test
  void recordMustLastUntilTheOrderIsDue() {
    records("PP,food,2026-12-02T15:00Z", "BLK,food,", "I1,food,");
    assertThat(plant.unplaced().reason())
        .isEqualTo("no food record for resin PP Moplen-like 5 (records.csv:2 expires too early)");
    records("PP,food,2026-12-02T15:01Z", "BLK,food,", "I1,food,");
    assertThat(plant.job().foodGrade()).isTrue();
  }

  @Test
  void everyInsertAndItsTipNeedARecord() {
    needs("food", "I1|I2");
    assertThat(plant.unplaced().reason()).isEqualTo("no food record for insert I2, tip T9");
  }

  @Test
  void everyNeedOfTheOrderNeedsItsOwnRecord() {
    needs("food|rohs", "I1");
    assertThat(plant.unplaced().reason())
        .isEqualTo(
            "no rohs record for resin PP Moplen-like 5, colour BLK, insert I1; the passivation of"
                + " insert I1 is not known");
  }

  @Test
  void restrictedSubstancesAreNotAFoodNeed() {
    needs("rohs", "I4");
    records("PP,RoHS,", "BLK,rohs,", "I4,rohs,");
    assertThat(plant.job().foodGrade()).isFalse();
  }

  @Test
  void hexavalentPassivationIsRefusedWhateverTheRecordSays() {
    needs("rohs", "I2");
    plant.file(
        "records.csv", "what,for,exemption", "PP,rohs,", "BLK,rohs,", "I2,rohs,6(c)", "T9,rohs,");
    assertThat(plant.unplaced().reason()).isEqualTo("insert I2 has a hexavalent passivation");
    assertThat(plant.unplaced().cure())
        .startsWith("ask the supplier of insert I2 for a trivalent one, then ");
    needs("rohs", "I3");
    records("PP,rohs,", "BLK,rohs,", "I3,rohs,", "T9,rohs,");
    assertThat(plant.job().options()).isNotEmpty();
  }

  @Test
  void unknownPassivationIsRefusedWithWhomToAsk() {
    needs("rohs", "I1");
    records("PP,rohs,", "BLK,rohs,", "I1,rohs,");
    assertThat(plant.unplaced().reason()).isEqualTo("the passivation of insert I1 is not known");
    assertThat(plant.unplaced().cure())
        .isEqualTo(
            "ask the supplier of insert I1 for the plating certificate, then enter the passivation"
                + " in inserts.csv, trivalent or none");
  }

  @Test
  void passivationThatTheItemSaysCountsForItsInsert() {
    needs("rohs", "I1");
    records("PP,rohs,", "BLK,rohs,", "I1,rohs,");
    plant.file("bom.csv", "item,attribute,value", "M1,passivation,trivalent");
    assertThat(plant.job().options()).isNotEmpty();
  }

  @Test
  void tipOfAnInsertNeedsARecordForRestrictedSubstances() {
    needs("rohs", "I3");
    records("PP,rohs,", "BLK,rohs,", "I3,rohs,");
    assertThat(plant.unplaced().reason()).isEqualTo("no rohs record for tip T9");
    assertThat(plant.unplaced().cure())
        .isEqualTo(
            "ask the supplier of tip T9 for a RoHS declaration, then add to records.csv (what,for):"
                + " T9,rohs");
    records("PP,rohs,", "BLK,rohs,", "I3,rohs,", "T9,rohs,2026-12-02");
    assertThat(plant.unplaced().reason())
        .isEqualTo("no rohs record for tip T9 (records.csv:5 expires too early)");
  }

  @Test
  void tipOfTheBillOfMaterialsNeedsARecord() {
    plant.file("bom.csv", "item,component,kind", "M1,T7,tip");
    assertThat(plant.unplaced().reason()).isEqualTo("no food record for tip T7");
    records("PP,food,", "BLK,food,", "I1,food,", "T7,food,");
    assertThat(plant.job().foodGrade()).isTrue();
  }

  @Test
  void colourThatIsNotKnownIsNotAssumedToBeFit() {
    plant.file(
        "orders.csv",
        "order,item,quantity,due,resin,needs,insert",
        "1,M1,100,2026-12-02,PP,food,I1");
    assertThat(plant.unplaced().reason())
        .isEqualTo("no food record for its colour, which is not known");
  }

  @Test
  void plantWithoutAFoodPressSaysSo() {
    plant.file("presses.csv", "press,orientation,clamp_kn", "P1,horizontal,900");
    assertThat(plant.unplaced().reason())
        .isEqualTo("no press takes mold M1: P1 not for food-grade work");
  }

  @Test
  void itemsKeptWithFoodCountAsFoodGradeWhereAPressIsThereForThem() {
    needs("", "I1");
    plant.file(
        "plant.json",
        "{\"plan_start\": \"2026-11-30T00:00Z\", \"food\": {\"kept_with_food\": [{\"resin\": \"PP\"}]}}");
    assertThat(plant.job().foodGrade()).isTrue();
    plant.file("presses.csv", "press,orientation,clamp_kn", "P1,horizontal,900");
    assertThat(plant.job().foodGrade()).isFalse();
  }

  @Test
  void recordOfNothingIsWarnedOf() {
    plant.file("colours.csv", "colour", "BLK");
    records("PP,food,", "BLK,food,", "I1,food,", "QQ,food,");
    assertThat(plant.findings())
        .anyMatch(
            f -> f.startsWith("records.csv:5: \"QQ\" is no resin, grade, colour, insert or tip"));
  }
}
