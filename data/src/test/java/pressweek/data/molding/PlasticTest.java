package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pressweek.data.molding.Regrind.Restriction;

/** Arithmetic our own. */
class PlasticTest {
  /**
   * 10 000 good, 3 % scrap, 4 cavities of 28 g, 14 g of runner, 15 start-up shots: 326.7 kg, of
   * which 36.3 kg are runner; 0.1 %.
   */
  @Test
  void plasticOfARun() {
    long shots = Amounts.shots(10_000, 3, 4);
    assertThat(Plastic.shotsKg(shots, 15, Shot.grams(4, 28, 14)))
        .isCloseTo(326.7, withPercentage(0.1));
    assertThat(Plastic.shotsKg(shots, 15, 14)).isCloseTo(36.3, withPercentage(0.1));
  }

  @Test
  void masterbatchIsDosedOnWhatHasNoColourYet() {
    Plastic fresh = Plastic.mix(326.7, 1.0 / 26, 0);
    assertThat(fresh.masterbatchKg()).isCloseTo(12.57, withPercentage(0.1));
    assertThat(fresh.naturalKg() + fresh.masterbatchKg()).isCloseTo(326.7, within(1e-9));
    Plastic mixed = Plastic.mix(100, 0.04, 0.2);
    assertThat(mixed.regrindKg()).isCloseTo(20, within(1e-9));
    assertThat(mixed.masterbatchKg()).isCloseTo(3.2, within(1e-9));
    assertThat(mixed.naturalKg()).isCloseTo(76.8, within(1e-9));
  }

  /** Runners of 20 % all go back at a limit of 25 %; of 40 % there remain 15 %. */
  @Test
  void runnersBeyondTheLimitAreLeftOver() {
    Regrind little = Regrind.steady(20, 100, 25);
    assertThat(little.share()).isCloseTo(0.20, within(1e-12));
    assertThat(little.surplus()).isCloseTo(0, within(1e-12));
    Regrind much = Regrind.steady(40, 100, 25);
    assertThat(much.share()).isCloseTo(0.25, within(1e-12));
    assertThat(much.surplus()).isCloseTo(0.15, within(1e-12));
  }

  /** Common practice, no source: none in food contact unless a record approves it. */
  @Test
  void restrictedWorkTakesNoneUnlessApproved() {
    assertThat(Regrind.limitPct(25, Restriction.NONE)).isEqualTo(25);
    assertThat(Regrind.limitPct(25, Restriction.APPROVED)).isEqualTo(25);
    assertThat(Regrind.limitPct(25, Restriction.NOT_APPROVED)).isZero();
    Regrind none = Regrind.steady(40, 100, 0);
    assertThat(none).isEqualTo(new Regrind(0, 0.4));
  }

  @Test
  void shotWithoutWeightHasNoRegrind() {
    assertThat(Regrind.steady(0, 0, 25)).isEqualTo(new Regrind(0, 0));
  }

  /** 1.5 barrels of 200 g; the factors are the plant's (common practice, no source). */
  @Test
  void purgeIsAMultipleOfTheBarrel() {
    assertThat(Changeover.purgeG(200, 1_500)).isEqualTo(300);
    assertThat(Changeover.purgeG(201, 1_500)).isEqualTo(302);
    assertThat(Changeover.barrelG(OptionalDouble.of(200.2), 250)).isEqualTo(201);
    assertThat(Changeover.barrelG(OptionalDouble.empty(), 250)).isEqualTo(250);
  }
}
