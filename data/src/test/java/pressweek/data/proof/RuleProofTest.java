package pressweek.data.proof;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Rules, tables and words that a proof finds fault with. */
class RuleProofTest extends ProofTries {
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

  @Test
  void fillForDoesNotApplyWhereEveryItemHasSomething() {
    assertThat(
            findings(
                """
                {"schema": "pressweek-guide/1", "name": "fill", "separator": "",
                 "fill": {"short": "_", "none": "-"},
                 "fields": {
                   "head": {"width": 2, "fill": {"none": ""}, "table": {"K": {}, "L": {}}},
                   "resin": {"width": 2, "table": {"PP": {}, "PF": {}}}},
                 "parts": {"code": {"forms": ["{head}{resin}"]}},
                 "families": [{"name": "grip", "parts": ["code"]}]}
                """))
        .containsExactly(
            "guide.json:5: warning: field \"resin\" may be written with \"-\" for \"does not"
                + " apply\": an item without resin");
  }
}
