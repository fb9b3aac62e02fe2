package pressweek.data.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the plant's files lack behind the symbols, and how large a guide may be. */
class PlantProofTest extends ProofTries {
  private static final String WITH_PLANT =
      """
      {"schema": "pressweek-guide/1", "separator": "-",
       "fields": {
         "head": {"table": {
           "K": {},
           "L": {},
           "M": {}}},
         "thread": {"table": {
           "8": "M8x1.25",
           "10": "M10x1.5"}},
         "length": {"sets": "length_mm", "number": {"min": 10, "max": 20, "step": 5}},
         "metal": {"table": {
           "ZN": {"insert_material": "steel", "finish": "zinc"},
           "BX": {"insert_material": "steel", "finish": "black"}}},
         "resin": {"table": {
           "PP": {},
           "PF": {}}},
         "colour": {"table": {
           "BK": {},
           "RD": {}}},
         "special": {"special": {"from": "01", "to": "99"}}},
       "parts": {"item": {"forms": ["{head}.{thread}.{length}.{metal}.{resin}.{colour}"]},
         "special": {"forms": ["Z{special}"], "optional": true}},
       "families": [{"name": "stud", "parts": ["item", "special"]}]}
      """;

  @Test
  void symbolsWithNothingBehindThem() throws IOException {
    file("molds.csv", "mold,makes,live_cavities,cycle_s,runs_on,hand_load", "T1,K,4,30,,no");
    file(
        "inserts.csv",
        "insert,kind,thread,length_mm,material,finish",
        "S1,stud,M8,15,steel,zinc",
        "S2,stud,M8,20,steel,");
    file("resins.csv", "resin,grade", "PP,any");
    file("colours.csv", "resin,colour,name", "PP,BK,black");
    file(
        "orders.csv",
        "order,item,quantity,due",
        "1,K.8.15.ZN.PP.BK-Z07,10,2026-12-02",
        "2,K.8.15.ZN.PP.BK-Z08,10,2026-12-02");
    file("bom.csv", "item,component,pieces", "K.8.15.ZN.PP.BK-Z07,S1,1");
    assertThat(plantFindings(WITH_PLANT))
        .containsExactly(
            "guide.json:5: warning: field \"head\": no mold in molds.csv makes L, M",
            "guide.json:9: warning: field \"thread\": no row of inserts.csv has the thread of 10",
            "guide.json:10: note: field \"length\": no row of inserts.csv has the length_mm of 10",
            "guide.json:13: warning: field \"metal\": no row of inserts.csv has the insert_material"
                + " and finish of BX",
            "guide.json:16: warning: field \"resin\": no row of resins.csv has the resin of PF",
            "guide.json:19: warning: field \"colour\": no row of colours.csv has the colour of RD",
            "orders.csv:3: warning: special \"K.8.15.ZN.PP.BK-Z08\" has no row in bom.csv");
  }

  @Test
  void filesThatAreNotThereAreNotMissed() {
    assertThat(plantFindings(WITH_PLANT)).isEmpty();
  }

  @Test
  void guideOfTwoThousandSymbolsTakesSeconds() {
    StringBuilder fields = new StringBuilder();
    StringBuilder form = new StringBuilder();
    for (String name : List.of("head", "thread", "resin", "colour", "finish")) {
      StringBuilder table = new StringBuilder();
      for (int i = 100; i < 500; i++) {
        table
            .append(i == 100 ? "" : ",")
            .append('"')
            .append(name.charAt(0))
            .append(i)
            .append("\": {}");
      }
      fields.append(fields.isEmpty() ? "" : ",");
      fields.append('"').append(name).append("\": {\"table\": {").append(table).append("}}");
      form.append('{').append(name).append('}');
    }
    long start = System.nanoTime();
    Proof proof =
        proof(
            "{\"schema\": \"pressweek-guide/1\", \"fields\": {"
                + fields
                + "}, \"parts\": {\"item\": {\"forms\": [\""
                + form
                + "\"]}}, \"families\": [{\"name\": \"knob\", \"parts\": [\"item\"], \"rules\": ["
                + "{\"when\": {\"head\": \"h100|h101\"}, \"only\": {\"resin\": \"r100|r101\"}},"
                + "{\"when\": {\"finish\": \"f100\"}, \"never\": {\"colour\": \"c100\"}}]}]}");
    assertThat(proof.findings()).isEmpty();
    assertThat(proof.written()).isGreaterThan(5_900);
    assertThat(System.nanoTime() - start).isLessThan(60_000_000_000L);
  }
}
