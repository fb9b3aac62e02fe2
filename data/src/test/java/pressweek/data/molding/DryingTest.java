package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class DryingTest {
  /** cn-nbt.com, hopper dryers: 300 L hold 195 kg of nylon or 255 kg of PET; exact. */
  @Test
  void massInAHopper() {
    assertThat(Drying.massKg(300, 0.65)).isCloseTo(195, within(1e-9));
    assertThat(Drying.massKg(300, 0.85)).isCloseTo(255, within(1e-9));
  }

  /** Own arithmetic: 11.34 kg/h for 4 h at 0.65 kg/L are 45.4 kg and 69.8 L; 0.1 %. */
  @Test
  void hopperOfARun() {
    double kg = Drying.hopperKg(11.34, 4);
    assertThat(kg).isCloseTo(45.4, withPercentage(0.1));
    assertThat(Drying.litres(kg, 0.65).orElseThrow()).isCloseTo(69.8, withPercentage(0.1));
    assertThat(Drying.litres(kg, 0)).isEmpty();
  }

  /** A dryer maker's newsletter, "Tip: drying residence time": 5 hours instead of 4. */
  @Test
  void coldHopperNeedsAnHourMore() {
    assertThat(Drying.hoursBeforeFirstShot(4, 1, true)).isEqualTo(5);
    assertThat(Drying.hoursBeforeFirstShot(4, 1, false)).isEqualTo(4);
  }

  /** Own arithmetic: 126 g every 40 s are 11.34 kg/h. */
  @Test
  void rateOfARun() {
    assertThat(Drying.rateKgH(126, 40).orElseThrow()).isCloseTo(11.34, within(1e-9));
    assertThat(Drying.rateKgH(126, 0)).isEmpty();
  }

  /** cnmouldplastic.com: 110 to 130 degrees; what a finish or tip bears is the plant's to say. */
  @Test
  void preheatStaysBelowWhatTheInsertBears() {
    OptionalDouble none = OptionalDouble.empty();
    assertThat(Preheat.of(none, 120, OptionalDouble.of(120)))
        .isEqualTo(new Preheat(120, Preheat.Answer.FINE));
    assertThat(Preheat.of(OptionalDouble.of(130), 120, OptionalDouble.of(120)))
        .isEqualTo(new Preheat(130, Preheat.Answer.TOO_HOT));
    assertThat(Preheat.of(none, 120, none).answer()).isEqualTo(Preheat.Answer.NOT_KNOWN);
  }
}
