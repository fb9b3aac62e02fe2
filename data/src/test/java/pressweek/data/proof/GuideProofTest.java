package pressweek.data.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.files.Folder;
import pressweek.data.guide.Guide;

/** Codes and symbols that a proof finds fault with. */
class GuideProofTest extends ProofTries {
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

  @Test
  void familiesThatReadTheSameCodesAsTheSameItems() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "name": "twins", "separator": "-",
                 "fields": {"head": {"table": {"K": {}, "L": {}}}},
                 "parts": {"head": {"forms": ["{head}"]}},
                 "families": [
                   {"name": "first", "parts": ["head"]},
                   {"name": "second", "parts": ["head"]}]}
                """))
        .anySatisfy(
            finding ->
                assertThat(finding)
                    .contains("families \"first\" and \"second\" both read code")
                    .contains("as the same item"));
  }
}
