package pressweek.data.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideReader;
import pressweek.data.week.Week;

class GuideProofTest {
  @TempDir private Path path;

  private Folder folder(String guide) {
    try {
      Files.writeString(path.resolve("guide.json"), guide);
      return FolderReader.read(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Guide guide(Folder folder) {
    GuideReader.Result result = Week.guide(folder);
    assertThat(result.findings()).isEmpty();
    return result.guide().orElseThrow();
  }

  private Proof proof(String guide) {
    return GuideProof.of(guide(folder(guide)), GuideProof.SEED);
  }

  private List<String> findings(String guide) {
    return proof(guide).findings().stream().map(Finding::toString).toList();
  }

  private List<String> plantFindings(String guide) {
    Folder folder = folder(guide);
    return GuideProof.of(guide(folder), folder, GuideProof.SEED).findings().stream()
        .map(Finding::toString)
        .toList();
  }

  private void file(String name, String... lines) throws IOException {
    Files.writeString(path.resolve(name), String.join("\n", lines) + "\n");
  }

  private static Folder example(String name) {
    try {
      return FolderReader.read(Path.of("../examples/" + name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void demoGuideHasNoFinding() {
    Folder week = example("quillback-week");
    Proof proof = GuideProof.of(guide(week), week, GuideProof.SEED);
    assertThat(proof.clean()).as(proof.findings().toString()).isTrue();
    assertThat(proof.open()).isZero();
    assertThat(proof.written()).isGreaterThan(8_000);
    assertThat(proof.tried()).endsWith("codes written and read back (seed 1).");
  }

  @Test
  void smallDemoGuideHasNoFinding() {
    Folder small = example("quillback-small");
    assertThat(GuideProof.of(guide(small), small, 2).clean()).isTrue();
  }

  @Test
  void sameSeedGivesTheSameProof() {
    Guide guide = guide(example("quillback-small"));
    assertThat(GuideProof.of(guide, 7)).isEqualTo(GuideProof.of(guide, 7));
    assertThat(GuideProof.of(guide, 8).written()).isPositive();
  }

  @Test
  void familiesThatCannotBeToldApart() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "separator": ".",
                 "fields": {"a": {"sets": "resin", "table": {"X": "PP"}},
                            "b": {"sets": "colour", "table": {"X": "BLK", "Y": "WHT"}}},
                 "parts": {"one": {"forms": ["{a}"]}, "other": {"forms": ["{b}"]}},
                 "families": [
                   {"name": "first", "parts": ["one"]},
                   {"name": "second", "parts": ["other"]}]}
                """))
        .hasSize(1)
        .first()
        .asString()
        .startsWith(
            "guide.json:7: error: families \"first\" and \"second\" cannot be told apart: code \"X\":"
                + " it has more than one meaning: first (resin PP), or second (colour BLK)");
  }

  @Test
  void neighboursThatCanBeCutInTwoPlaces() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "separator": "",
                 "fields": {
                   "head": {"table": {
                     "A": {},
                     "AB": {}}},
                   "resin": {"table": {
                     "P": "PP",
                     "BP": "PBT"}}},
                 "parts": {"head": {"forms": ["{head}"]}, "resin": {"forms": ["{resin}"]}},
                 "families": [{"name": "knob", "parts": ["head", "resin"]}]}
                """))
        .hasSize(1)
        .first()
        .asString()
        .startsWith(
            "guide.json:5: error: part \"head\" can be read in two ways: code \"ABP\": it has more"
                + " than one meaning: ")
        .contains("head AB, resin PP")
        .contains("head A, resin PBT");
  }

  @Test
  void rarePairIsFoundThoughNoRandomCodeWouldHoldIt() {
    StringBuilder heads = new StringBuilder("\"QZ\": {}, \"QZW\": {}");
    StringBuilder resins = new StringBuilder("\"W-9\": {}, \"-9\": {}");
    for (int i = 100; i < 900; i++) {
      heads.append(", \"h").append(i).append("\": {}");
      resins.append(", \"-r").append(i).append("\": {}");
    }
    List<String> findings =
        findings(
            "{\"schema\": \"pressweek-guide/1\", \"separator\": \"\", \"fields\": {\"head\": {\"table\": {"
                + heads
                + "}}, \"resin\": {\"table\": {"
                + resins
                + "}}}, \"parts\": {\"item\": {\"forms\": [\"{head}{resin}\"]}},"
                + "\"families\": [{\"name\": \"knob\", \"parts\": [\"item\"]}]}");
    assertThat(findings).hasSize(1).first().asString().contains("code \"QZW-9\"");
  }

  @Test
  void numberThatTakesTheDigitsOfItsNeighbour() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "separator": "",
                 "fields": {
                   "length": {"sets": "length_mm", "number": {"min": 10, "max": 60, "step": 5}},
                   "metal": {"table": {
                     "2": "A2",
                     "Z": "steel"}}},
                 "parts": {"item": {"forms": ["{length}{metal}"]}},
                 "families": [{"name": "stud", "parts": ["item"]}]}
                """))
        .hasSize(1)
        .first()
        .asString()
        .startsWith(
            "guide.json:3: error: what the guide lets one write cannot be read back: code ");
  }

  @Test
  void optionalPartThatAnotherOneTakes() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "separator": "",
                 "fields": {"head": {"table": {"K": {}}},
                   "length": {"sets": "length_mm", "number": {"min": 1, "max": 99999}},
                   "size": {"number": {"min": 1, "max": 9}}},
                 "parts": {
                   "head": {"forms": ["{head}"]},
                   "length": {"forms": ["{length}"]},
                   "size": {"forms": ["{size}"], "optional": true}},
                 "families": [{"name": "stud", "parts": ["head", "length", "size"]}]}
                """))
        .contains(
            "guide.json:8: error: optional part \"size\" is never read as itself: other parts take"
                + " what it is written as");
  }

  @Test
  void symbolThatTheRulesForbidEverywhere() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "separator": "-",
                 "fields": {"head": {"table": {
                     "K": {},
                     "L": {},
                     "M": {}}},
                   "resin": {"table": {"PP": {}, "PF": {}}}},
                 "parts": {"head": {"forms": ["{head}"]}, "resin": {"forms": ["{resin}"]}},
                 "families": [{"name": "knob", "parts": ["head", "resin"], "rules": [
                   {"when": {"head": "L|M"}, "only": {"resin": "PF"}, "because": "it gets hot"},
                   {"when": {"head": "L|M"}, "never": {"resin": "PF"}, "because": "it gets cold"}]}]}
                """))
        .hasSize(1)
        .first()
        .asString()
        .startsWith("guide.json:4: warning: L, M of \"head\" can stand in no good code: code \"L-P")
        .contains("it gets ");
  }

  @Test
  void formThatTheRulesForbidEverywhere() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "separator": "-",
                 "fields": {"head": {"table": {"K": {"hub": "cored"}, "L": {"hub": "cored"}}}},
                 "parts": {"head": {"forms": ["{head}",
                   {"form": "{head}F", "sets": {"hub": "solid"}}]}},
                 "families": [{"name": "knob", "parts": ["head"]}]}
                """))
        .containsExactly(
            "guide.json:4: warning: form \"{head}F\" of part \"head\" can stand in no good code");
  }

  private static String withRules(String... rules) {
    return """
           {"schema": "pressweek-guide/1", "separator": "-",
            "fields": {"head": {"table": {"K": {"style": "ball"}, "L": {"style": "lever"}}},
              "resin": {"table": {"PP": {}, "PF": {}}}, "hub": {"table": {"F": "solid"}}},
            "parts": {"head": {"forms": ["{head}"]}, "resin": {"forms": ["{resin}"]},
              "hub": {"forms": ["{hub}"], "optional": true}},
            "families": [{"name": "knob", "parts": ["head", "resin", "hub"]}],
            "rules": [
           """
        + String.join(",\n", rules)
        + "]}";
  }

  @Test
  void ruleThatNeverApplies() {
    assertThat(
            findings(
                withRules(
                    "{\"default\": {\"hub\": \"cored\"}}",
                    "{\"when\": {\"style\": \"ball\", \"head\": \"L\"}, \"never\": {\"resin\": \"PF\"}}")))
        .containsExactly(
            "guide.json:9: warning: the rule (never resin PF) never applies: no item has style ball"
                + " with head L");
  }

  @Test
  void ruleWithAValueThatNoSymbolGives() {
    assertThat(
            findings(withRules("{\"when\": {\"style\": \"bal\"}, \"never\": {\"resin\": \"PF\"}}")))
        .containsExactly(
            "guide.json:8: warning: the rule (never resin PF): no symbol gives style \"bal\"; nearest:"
                + " ball, lever");
    assertThat(findings(withRules("{\"never\": {\"finish\": \"zinc\"}}")))
        .first()
        .asString()
        .contains("guide.json:8: warning: ")
        .contains("nothing in a code says \"finish\"");
  }

  @Test
  void rulesThatContradictEachOther() {
    assertThat(
            findings(
                withRules(
                    "{\"when\": {\"style\": \"ball\"}, \"then\": {\"hub\": \"solid\"}, \"because\": \"small\"}",
                    "{\"when\": {\"resin\": \"PF\"}, \"then\": {\"hub\": \"cored\"}, \"because\": \"light\"}")))
        .hasSize(1)
        .first()
        .asString()
        .startsWith(
            "guide.json:9: warning: the rule contradicts the rule in line 8 where both apply: code"
                + " \"K-PF")
        .contains("hub is \"solid\" (small) and \"cored\" (light)");
  }

  @Test
  void ruleThatOnlyEverRefuses() {
    assertThat(
            findings(withRules("{\"when\": {\"hub\": \"solid\"}, \"then\": {\"hub\": \"cored\"}}")))
        .anyMatch(
            f -> f.startsWith("guide.json:8: warning: the rule (then hub cored) refuses every"));
  }

  @Test
  void rulesThatChangeNothingAreNoted() {
    Proof proof =
        proof(
            withRules(
                "{\"default\": {\"resin\": \"PP\"}}",
                "{\"when\": {\"head\": \"K\"}, \"then\": {\"style\": \"ball\"}}",
                "{\"when\": {\"head\": \"K\"}, \"never\": {\"style\": \"lever\"}}"));
    assertThat(proof.findings())
        .extracting(Finding::toString)
        .containsExactly(
            "guide.json:8: note: the rule (default resin PP) is never used: the attribute is always"
                + " said",
            "guide.json:9: note: the rule (then style ball) says nothing that is not said already",
            "guide.json:10: note: the rule (never style lever) forbids nothing that a code could say");
    assertThat(proof.clean()).isTrue();
  }

  @Test
  void symbolInTwoTablesOfOnePlace() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "separator": "-",
                 "fields": {"head": {"table": {"K": {}}},
                   "colour": {"table": {
                     "BR": "brown",
                     "RD": "red"}},
                   "metal": {"table": {
                     "ZN": "steel",
                     "BR": "brass"}}},
                 "parts": {"head": {"forms": ["{head}"]},
                   "colour": {"forms": ["{colour}"], "optional": true},
                   "metal": {"forms": ["{metal}"], "optional": true}},
                 "families": [{"name": "knob", "parts": ["head", "colour", "metal"]}]}
                """))
        .satisfiesExactly(
            ambiguous ->
                assertThat(ambiguous)
                    .startsWith(
                        "guide.json:4: error: parts \"colour\" and \"metal\" cannot be told apart:"
                            + " code \"K-BR\": it has more than one meaning"),
            overlap ->
                assertThat(overlap)
                    .isEqualTo(
                        "guide.json:8: warning: \"BR\" stands in \"colour\", too (line 4), which may"
                            + " come at the same place as \"metal\""));
  }

  @Test
  void symbolThatIsAnotherPartsMark() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "separator": "-",
                 "fields": {"colour": {"table": {
                     "FC": "fuchsia",
                     "RD": "red"}}},
                 "parts": {"colour": {"forms": ["{colour}"], "any_order": true},
                   "food": {"forms": [
                     {"form": "FC", "sets": {"food": "yes"}}], "any_order": true, "optional": true}},
                 "families": [{"name": "knob", "parts": ["colour", "food"]}]}
                """))
        .contains(
            "guide.json:7: warning: \"FC\" stands in \"colour\", too (line 3), which may come at the"
                + " same place as \"FC\" of part \"food\"");
  }

  @Test
  void wordsThatMeanTwoThings() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "separator": "-",
                 "fields": {"colour": {"table": {
                     "RD": {"words": "red"},
                     "WI": {"words": ["wine", "Red"]},
                     "BK": {"words": "black"}}}},
                 "words": {
                   "synonyms": [{"words": ["jet", "wine"], "set": {"colour": "BK"}}],
                   "everyday": [{"words": ["black"], "set": {"colour": "BK"}}]},
                 "parts": {"colour": {"forms": ["{colour}"]}},
                 "families": [{"name": "knob", "parts": ["colour"]}]}
                """))
        .containsExactly(
            "guide.json:4: warning: \"red\" means colour WI (symbol \"WI\" of \"colour\") and also"
                + " colour RD (symbol \"RD\" of \"colour\", line 3)",
            "guide.json:7: warning: \"wine\" means colour BK (a synonym) and also colour WI (symbol"
                + " \"WI\" of \"colour\", line 4)");
  }

  @Test
  void wordsAndAssumptionsThatLeadNowhere() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "separator": "-",
                 "fields": {"colour": {"table": {"RD": {}, "BK": {}}},
                            "resin": {"table": {"PP": {}, "PF": {"colour": "BK"}}}},
                 "words": {
                   "measures": [{"attribute": "lenght_mm", "words": ["long"]}],
                   "synonyms": [{"words": ["crimson"], "set": {"colour": "RED"}},
                                {"words": ["shiny"], "set": {"gloss": "yes"}}],
                   "everyday": [
                     {"words": ["bakelite"], "set": {"resin": "PF"}, "when": {"colour": "RD"}}],
                   "assume": [
                     {"set": {"colour": "BK"}},
                     {"when": {"resin": "PP"}, "set": {"colour": "RD"}},
                     {"when": {"colour": "RD", "resin": "PF"}, "set": {"resin": "PF"}}]},
                 "parts": {"colour": {"forms": ["{colour}"]}, "resin": {"forms": ["{resin}"]}},
                 "families": [{"name": "knob", "parts": ["colour", "resin"]}]}
                """))
        .containsExactly(
            "guide.json:5: warning: measure: nothing in a code says \"lenght_mm\"; nearest: resin,"
                + " colour",
            "guide.json:6: warning: \"crimson\": no symbol gives colour \"RED\"; nearest: RD, BK",
            "guide.json:7: warning: \"shiny\": nothing in a code says \"gloss\"; nearest: colour,"
                + " resin",
            "guide.json:9: warning: everyday word \"bakelite\" can never be used: no good code says it of"
                + " colour RD",
            "guide.json:12: warning: the assumption colour RD is never used: line 11 comes first",
            "guide.json:13: warning: the assumption resin PF can never be used: no item has colour RD,"
                + " resin PF");
  }

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
