package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.FolderReader;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Item;
import pressweek.data.problem.Origin;

/** An order line's item by its code in any spelling, or by the customer's own number. */
class ItemNamesTest {
  private static final String GUIDE =
      """
      {"schema": "pressweek-guide/1", "name": "Two parts", "separator": "-", "ignore_case": true,
       "fields": {
         "head": {"table": {"K": {"words": "knob"}, "L": {"words": "lever"}}},
         "colour": {"table": {"BK": "BLK", "RD": "RED"}},
         "special": {"special": {"from": "01", "to": "99"}}
       },
       "parts": {
         "head": {"forms": ["{head}"]},
         "colour": {"forms": ["{colour}"], "optional": true},
         "special": {"forms": ["X{special}"], "optional": true}
       },
       "families": [{"name": "grip", "parts": ["head", "colour", "special"]}],
       "rules": [{"default": {"colour": "BLK"}}, {"then": {"resin": "PP"}}]}
      """;

  @TempDir private Path temp;
  private PlantFolder plant;

  @BeforeEach
  void makeFolder() {
    plant = new PlantFolder(temp);
    plant.file("guide.json", GUIDE);
    plant.file(
        "molds.csv", "mold,makes,live_cavities,cycle_s,runs_on,hand_load", "M1,K|L,4,30,,no");
    plant.file(
        "customer_parts.csv",
        "customer,customer_part,revision,item",
        "Galley Co,G-7,A,K-BK",
        "Galley Co,G-7,B,K-RD",
        ",77 12,,L-RD",
        "Winch Ltd,W1,C,L-BK");
  }

  private void order(String customer, String part, String revision, String item) {
    plant.file(
        "orders.csv",
        "order,customer,customer_part,revision,item,quantity,due",
        String.join(",", "1", customer, part, revision, item, "100", "2026-12-02"));
  }

  private String code() {
    return plant.job().item().code();
  }

  @Test
  void customersNumberAndRevisionLeadToTheItem() {
    order("Galley Co", "g-7", "B", "");
    assertThat(code()).isEqualTo("K-RD");
    assertThat(plant.job().colour()).isEqualTo("RED");
  }

  @Test
  void aNumberForAnyCustomerIsFoundWithoutItsSpaces() {
    order("Whoever", "7712", "", "");
    assertThat(code()).isEqualTo("L-RD");
  }

  @Test
  void aRevisionThatIsNotSaidIsTakenWhereOnlyOneItemIsMeant() {
    order("Winch Ltd", "W1", "", "");
    assertThat(code()).isEqualTo("L-BK");
  }

  @Test
  void itemsThatDifferByRevisionAreAskedBack() {
    order("Galley Co", "G-7", "", "");
    assertThat(plant.unplaced().reason())
        .isEqualTo("customer part \"G-7\" differs by revision; which one? known: A, B");
    order("Galley Co", "G-7", "D", "");
    assertThat(plant.unplaced().reason())
        .isEqualTo(
            "revision \"D\" of customer part \"G-7\" is not in customer_parts.csv; known: A, B");
  }

  @Test
  void anotherCustomersNumberIsNotTaken() {
    order("Galley Co", "W1", "C", "");
    assertThat(plant.unplaced().reason())
        .isEqualTo("customer part \"W1\" is known for Winch Ltd, not for customer \"Galley Co\"");
    assertThat(plant.unplaced().item()).isEqualTo("W1");
  }

  @Test
  void theItemCodeCountsBeforeTheCustomersNumber() {
    order("Galley Co", "G-7", "B", "L");
    assertThat(code()).isEqualTo("L");
  }

  @Test
  void anotherSpellingOfAnItemIsTheSameItem() {
    order("", "", "", "k-bk");
    plant.file("stock.csv", "item,on_hand", "K,30");
    assertThat(plant.job().quantity().fromStock()).isEqualTo(30);
  }

  @Test
  void aSpecialIsPlannedOnlyByItsRecord() {
    order("", "", "", "K-RD-X04");
    assertThat(plant.unplaced().reason())
        .isEqualTo("the code says special, and bom.csv has no record of item \"K-RD-X04\"");
    plant.file("bom.csv", "item,component,attribute,value", "k-rd-x04,,colour,TEAL");
    assertThat(plant.job().colour()).isEqualTo("TEAL");
    assertThat(plant.job().item().attributes())
        .contains(new Attribute(Item.COLOUR, "TEAL", Origin.RECORD, "bom.csv:2 says"));
  }

  @Test
  void aBomRowNamesAComponentOrAnAttribute() {
    plant.file("bom.csv", "item,component,attribute,value", "K,B1,colour,TEAL", "K,,colour,");
    assertThat(plant.read().errors())
        .extracting(Object::toString)
        .contains(
            "bom.csv:2: component and attribute in one row; expected one of the two",
            "bom.csv:3: value is empty; expected a value");
  }

  private void words(String words) {
    plant.file("orders.csv", "order,words,quantity,due", "1,\"" + words + "\",100,2026-12-02");
  }

  @Test
  void wordsAreReadByTheGuide() {
    words("red lever");
    plant.file("guide.json", GUIDE.replace("\"RED\"", "{\"colour\": \"RED\", \"words\": \"red\"}"));
    assertThat(code()).isEqualTo("L-RD");
    assertThat(plant.job().item().attributes())
        .contains(
            new Attribute(Item.COLOUR, "RED", Origin.WORDS, "\"red\""),
            new Attribute(Item.RESIN, "PP", Origin.RULE, "always so"));
  }

  @Test
  void wordsWithAnOpenQuestionLeaveTheLineUnplaced() {
    words("frobly red");
    plant.file("guide.json", GUIDE.replace("\"RED\"", "{\"colour\": \"RED\", \"words\": \"red\"}"));
    assertThat(plant.unplaced().item()).isEqualTo("frobly red");
    assertThat(plant.unplaced().reason()).contains("which head?").contains("what is \"frobly\"?");
    assertThat(plant.unplaced().cure()).startsWith("ask the customer");
  }

  @Test
  void wordsWithoutAGuideAreNotGuessed() throws IOException {
    words("red lever");
    plant.read();
    Files.delete(temp.resolve("guide.json"));
    WeekResult week = Week.build(FolderReader.read(temp), PlantFolder.NOW);
    assertThat(week.problem().orElseThrow().unplaced().get(0).reason())
        .isEqualTo("the item is said in words, and there is no guide.json to read them by");
  }

  @Test
  void aNumberOfPiecesInTheWordsThatIsNotTheLinesIsAsked() {
    words("lever 300 pcs");
    assertThat(plant.unplaced().reason())
        .contains("how many? the words say 300, the line says 100");
  }

  @Test
  void customerPartsThatDifferInCapitalsOnlyAreOneTooMany() {
    plant.file("customer_parts.csv", "customer,customer_part,item", "Acme,A-1,K", "acme,a -1,L");
    assertThat(plant.read().errors())
        .extracting(Object::toString)
        .anySatisfy(error -> assertThat(error).contains("customer_parts.csv:3: "));
  }
}
