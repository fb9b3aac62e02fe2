package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

class ShotTest {
  /** Bozzelli, Plastics Technology: 164 g of PP at 0.90 g/cm3. */
  @Test
  void volumeOfAShot() {
    double volume = Shot.volumeCm3(164, 0.90).orElseThrow();
    assertThat(volume).isCloseTo(182.2, withPercentage(0.1));
    assertThat(Shot.fluidOunces(volume)).isCloseTo(6.16, withPercentage(0.1));
  }

  /**
   * The same shot in a barrel of 8 ounces of polystyrene: 84 %, not the 72 % that ounces of mass
   * suggest (arithmetic ours).
   */
  @Test
  void shareOfABarrelRatedInPolystyrene() {
    double pct = Shot.barrelPct(164, 8 * 28.349523, 0.90, 1.05).orElseThrow();
    assertThat(pct).isCloseTo(84.4, within(0.1));
  }

  @Test
  void gramsOfAShotCountTheRunnerOnce() {
    assertThat(Shot.grams(4, 28, 14)).isEqualTo(126);
  }

  /** Own arithmetic: 8 ounces of polystyrene at 1.05 are 194.4 g of PP at 0.90; 0.1 %. */
  @Test
  void ratedShotInAnotherResin() {
    assertThat(Shot.ratedG(8 * 28.349523, 0.90, 1.05).orElseThrow())
        .isCloseTo(194.4, withPercentage(0.1));
  }

  @Test
  void nothingIsDividedByZero() {
    assertThat(Shot.volumeCm3(164, 0)).isEmpty();
    assertThat(Shot.barrelPct(164, 0, 0.90, 1.05)).isEmpty();
    assertThat(Shot.barrelPct(164, 200, 0, 1.05)).isEmpty();
    assertThat(Shot.barrelPct(164, 200, 0.90, 0)).isEmpty();
  }
}
