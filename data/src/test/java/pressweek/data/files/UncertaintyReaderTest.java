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
