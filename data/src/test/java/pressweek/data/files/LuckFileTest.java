package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Uncertainty;

class LuckFileTest {
  private static Uncertainty plant(String uncertainty) {
    try {
      JsonReading reading =
          JsonReader.read("plant.json", new StringReader("{\"uncertainty\": " + uncertainty + "}"));
      Findings findings = new Findings();
      PlantRow plant = PlantReader.read(reading.object(), findings);
      assertThat(findings.list()).isEmpty();
      return plant.uncertainty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Uncertainty again(Uncertainty luck) {
    LuckFile.Reading reading = LuckFile.read("luck", LuckFile.text(luck));
    assertThat(reading.errors()).isEmpty();
    return reading.luck().orElseThrow();
  }

  @Test
  void whatIsWrittenIsReadToTheLastDecimal() {
    Uncertainty luck =
        plant(
            """
            {"cycle_pct": 101.123456789012, "cycle_spread_pct": 0.1, "scrap_spread_pct": 0,
             "change_pct": 33.3, "change_spread_pct": 1e-7, "breakdown_every_h": 99999.7,
             "repair_min": 12.345678901234567, "repair_spread_pct": 299.99,
             "presses": [{"press": "V \\"3\\"", "breakdown_every_h": 0.3}, {"press": "H1"}],
             "receipt_late_pct": 7, "receipt_late_days": 0.7, "after_horizon_days": 3}
            """);
    assertThat(again(luck)).isEqualTo(luck);
    assertThat(LuckFile.text(again(luck))).isEqualTo(LuckFile.text(luck));
    assertThat(again(plant("{}"))).isEqualTo(plant("{}"));
  }

  @Test
  void whatIsOnlyAskedOfReplaysIsNoPartOfIt() {
    String plain = LuckFile.text(plant("{}"));
    assertThat(plain)
        .isEqualTo(
            "{\"cycle_pct\":100,\"cycle_spread_pct\":5,\"scrap_spread_pct\":50,\"change_pct\":100,"
                + "\"change_spread_pct\":25,\"breakdown_every_h\":100,\"repair_min\":60,"
                + "\"repair_spread_pct\":100,\"presses\":[],\"receipt_late_pct\":10,"
                + "\"receipt_late_days\":1,\"after_horizon_days\":21}");
    assertThat(LuckFile.text(plant("{\"sure_pct\": 80, \"slack_h\": [2], \"sure_replays\": 30}")))
        .isEqualTo(plain);
    assertThat(LuckFile.text(plant("{\"cycle_spread_pct\": 5.5}"))).isNotEqualTo(plain);
    assertThat(LuckFile.text(plant("{\"after_horizon_days\": 20}"))).isNotEqualTo(plain);
  }

  @Test
  void whatIsWrongIsSaid() {
    assertThat(LuckFile.read("luck", "{\"cycle_pct\": -1}").errors())
        .extracting(InputError::toString)
        .containsExactly("luck:1: cycle_pct is the number -1; expected a number from 10 to 1,000");
    assertThat(LuckFile.read("luck", "{\"cycle_pct\"").luck()).isEmpty();
    assertThat(LuckFile.read("luck", "[]").luck()).isEmpty();
  }
}
