package pressweek.data.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.files.InputError;

class GuideReaderTest {
  private static final String GOOD =
      """
      {"schema": "pressweek-guide/1", "separator": "/", "ignore_case": true,
       "fields": {"resin": {"table": {"PP": {"words": ["polypropylene", "poly"]}}}},
       "parts": {"resin": {"forms": ["{resin}"]}},
       "families": [{"name": "knob", "parts": ["resin"]}],
       "rules": [{"when": {"resin": "PP"}, "then": {"hub": "cored"}}]}
      """;

  private static List<String> findings(String json) {
    GuideReader.Result result = GuideReader.read(Json.object(json));
    boolean errors =
        result.findings().stream().anyMatch(f -> f.severity() == InputError.Severity.ERROR);
    assertThat(result.guide().isPresent()).isEqualTo(!errors);
    return result.findings().stream().map(InputError::toString).toList();
  }

  @Test
  void goodGuideHasNoFindings() {
    assertThat(findings(GOOD)).isEmpty();
  }

  @Test
  void anotherSchemaIsRefused() {
    assertThat(findings(GOOD.replace("guide/1", "guide/9")))
        .containsExactly(
            "guide.json:1: schema is \"pressweek-guide/9\"; expected \"pressweek-guide/1\"");
  }

  @Test
  void unknownKeyIsNamedWithItsLineAndTheNearest() {
    assertThat(findings(GOOD.replace("\"rules\"", "\"ruels\"")).get(0))
        .startsWith("guide.json:5: unknown key \"ruels\"; nearest: rules");
  }

  @Test
  void allFaultsAreFoundInOneGo() {
    List<String> findings =
        findings(
            """
            {"schema": "pressweek-guide/1", "separator": "/", "ignore_case": true,
             "fields": {"resin": {"table": {"pp": {}, "PP": {}, "A/B": {}}},
                        "none": {},
                        "length": {"number": {"min": 9, "max": 3, "step": 0}}},
             "parts": {"resin": {"forms": ["{resni}", "{resin", "a/b"]}, "spare": {"forms": []}},
             "families": [{"name": "knob", "parts": ["resin", "colour"]}, {"name": "knob", "parts": 7}],
             "rules": [{"then": {"a": "b"}, "never": {"c": "d"}}, {"then": {"a": "b|c"}}, {"only": {}}]}
            """);
    assertThat(String.join("\n", findings))
        .contains("guide.json:2: \"pp\" and \"PP\" are the same where case is ignored")
        .contains("guide.json:2: symbol \"A/B\" holds the separator")
        .contains("guide.json:3: field \"none\" has no \"table\", no \"number\" and no \"special\"")
        .contains("guide.json:4: min 9 is above max 3")
        .contains("guide.json:4: step is 0; expected more than 0")
        .contains("guide.json:5: unknown field \"resni\"; nearest: resin")
        .contains("guide.json:5: form \"{resin\" has no \"}\"")
        .contains("guide.json:5: \"a/b\" in a form holds the separator")
        .contains("guide.json:5: part \"spare\" has no forms")
        .contains("guide.json:6: unknown part \"colour\"; nearest: resin")
        .contains("guide.json:6: a second family \"knob\"")
        .contains("guide.json:6: \"parts\" is the number 7; expected a list")
        .contains("guide.json:7: a rule with 2 of then, default, only, never")
        .contains("guide.json:7: \"a b|c\" in a then; expected one value")
        .contains("guide.json:7: an empty \"only\"")
        .contains("guide.json:1: part \"spare\" is in no family")
        .contains("field \"length\" is in no part");
  }
}
