package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

class ShotTest {
  /** Bozzelli, Plastics Technology: 164 g of PP at 0.90 g/cm3. */
  @Test
  void volumeOfAShot() {
    double volume = Shot.volumeCm3(164, 0.90);
    assertThat(volume).isCloseTo(182.2, withPercentage(0.1));
    assertThat(Shot.fluidOunces(volume)).isCloseTo(6.16, withPercentage(0.1));
  }

  /**
   * The same shot in a barrel of 8 ounces of polystyrene: 84 %, not the 72 % that ounces of mass
   * suggest (arithmetic ours).
   */
  @Test
  void shareOfABarrelRatedInPolystyrene() {
    assertThat(Shot.barrelPct(164, 8 * 28.349523, 0.90, 1.05)).isCloseTo(84.4, within(0.1));
  }

  @Test
  void gramsOfAShotCountTheRunnerOnce() {
    assertThat(Shot.grams(4, 28, 14)).isEqualTo(126);
  }

  /** Published how-to on residence time: 200 g rated, 100 g a shot, 15 s. */
  @Test
  void residence() {
    assertThat(Shot.residenceS(200, 100, 15)).isCloseTo(42, within(1e-9));
  }
}
