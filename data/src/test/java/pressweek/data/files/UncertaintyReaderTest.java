package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Uncertainty;

class UncertaintyReaderTest {
  private final Findings findings = new Findings();

  private PlantRow read(String json) {
    try {
      JsonReading reading = JsonReader.read("plant.json", new StringReader(json));
      assertThat(reading.findings()).isEmpty();
      return PlantReader.read(reading.object(), findings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<String> findings() {
    return findings.list().stream().map(InputError::toString).toList();
  }

  @Test
  void aPressMayHaveBreakdownsOfItsOwn() {
    PlantRow plant =
        read(
            """
            {"uncertainty": {"repair_min": 50, "presses": [
              {"press": "V3", "breakdown_every_h": 40},
              {"press": "V4", "breakdown_every_h": 0}]}}
            """);

    assertThat(findings()).isEmpty();
    assertThat(plant.uncertainty().of("V3")).isEqualTo(new Uncertainty.Breakdown(40, 50, 100));
    assertThat(plant.uncertainty().of("V4").everyH()).isZero();
    assertThat(plant.uncertainty().of("V5")).isEqualTo(new Uncertainty.Breakdown(100, 50, 100));
    assertThat(plant.gave("uncertainty.repair_min")).isTrue();
    assertThat(plant.gave("uncertainty.cycle_pct")).isFalse();
  }

  @Test
  void howSureThePlantWantsToBeHasShownDefaults() {
    Uncertainty plain = read("{}").uncertainty();
    assertThat(plain.aim()).isEqualTo(new Uncertainty.Aim(90, List.of(60, 240, 480, 1440)));
    assertThat(plain.effort()).isEqualTo(new Uncertainty.Effort(21, 4, 300_000, 400, 90));

    Uncertainty own =
        read("""
                {"uncertainty": {"sure_pct": 97.5, "slack_h": [8, 0.5, 8], "after_horizon_days": 0,
                  "tried_of_a_kind": 0, "tried_runs": 1000, "sure_replays": 50, "careful_pct": 80}}
                """)
            .uncertainty();
    assertThat(findings()).isEmpty();
    assertThat(own.aim()).isEqualTo(new Uncertainty.Aim(97.5, List.of(30, 480)));
    assertThat(own.effort()).isEqualTo(new Uncertainty.Effort(0, 0, 1_000, 50, 80));
    assertThat(read("{\"uncertainty\": {\"slack_h\": []}}").uncertainty().aim().slackMin())
        .isEmpty();
    assertThat(read("{\"uncertainty\": {\"slack_h\": 2}}").uncertainty().aim().slackMin())
        .containsExactly(120);
  }

  @Test
  void whatIsWrongWithTheAimIsSaid() {
    read(
        """
        {"uncertainty": {"sure_pct": 100.1, "slack_h": [1, "two", 0, 745], "after_horizon_days": 91,
          "tried_of_a_kind": 1.5, "tried_runs": 10, "sure_replays": 0, "careful_pct": 100}}
        """);
    read("{\"uncertainty\": {\"slack_h\": [1, 2, 3, 4, 5, 6, 7, 8, 9]}}");

    assertThat(findings())
        .containsExactlyInAnyOrder(
            "plant.json:1: uncertainty.sure_pct is the number 100.1; expected a number from 50 to 100",
            "plant.json:1: uncertainty.slack_h is the text \"two\"; expected hours from 0.1 to 744, or a list of them",
            "plant.json:1: uncertainty.slack_h is the number 0; expected hours from 0.1 to 744, or a list of them",
            "plant.json:1: uncertainty.slack_h is the number 745; expected hours from 0.1 to 744, or a list of them",
            "plant.json:1: uncertainty.after_horizon_days is the number 91; expected a whole number from 0 to 90",
            "plant.json:2: uncertainty.tried_of_a_kind is the number 1.5; expected a whole number from 0 to 100",
            "plant.json:2: uncertainty.tried_runs is the number 10; expected a whole number from 1,000 to 100,000,000",
            "plant.json:2: uncertainty.sure_replays is the number 0; expected a whole number from 20 to 10,000",
            "plant.json:2: uncertainty.careful_pct is the number 100; expected a number from 50 to 99.9",
            "plant.json:1: uncertainty.slack_h is a list; expected at most 8 of them");
  }

  @Test
  void whatIsWrongWithUncertaintyIsSaid() {
    read(
        """
        {"uncertainty": {"cycle_pct": 5, "spread": 3, "presses": [
          {"press": "V3"}, {"press": "V3"}, {"breakdown_every_h": 3}, {"press": "V4", "repair_min": "x"}]}}
        """);

    assertThat(findings())
        .anySatisfy(f -> assertThat(f).contains("uncertainty.cycle_pct is the number 5; expected"))
        .anySatisfy(f -> assertThat(f).contains("\"uncertainty.spread\" is not known"))
        .anySatisfy(f -> assertThat(f).contains("expected a \"press\" in each, every press once"))
        .anySatisfy(f -> assertThat(f).contains("repair_min is the text \"x\"; expected a number"));
  }
}
