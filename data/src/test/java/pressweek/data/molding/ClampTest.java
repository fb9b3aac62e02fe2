package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

class ClampTest {
  private static final double DISC_90_MM_CM2 = Math.PI * 9 * 9 / 4;

  /** Crawford, Plastics Engineering, p. 296. */
  @Test
  void fourDiscsOfAbsWithTheirRunner() {
    double effective = Clamp.knCm2FromMpa(120);
    assertThat(Clamp.forceKn(DISC_90_MM_CM2, effective, 1)).isCloseTo(763, withPercentage(0.5));
    assertThat(Clamp.forceKn(9.60, effective, 1)).isCloseTo(115, withPercentage(0.5));
    double area = Clamp.projectedAreaCm2(4, DISC_90_MM_CM2, 9.60);
    assertThat(Clamp.forceKn(area, effective, 1)).isCloseTo(3167, withPercentage(0.5));
  }

  /** Crawford, Plastics Engineering, p. 296: the same disc, pin-gated. */
  @Test
  void pinGatedDisc() {
    double effective = Clamp.knCm2FromMpa(50 * 1.15 * 1.4);
    assertThat(Clamp.forceKn(DISC_90_MM_CM2, effective, 1)).isCloseTo(512, withPercentage(0.5));
  }

  /** Austek, "Calculate clamping force": published areas and pressure; the product is ours. */
  @Test
  void twoPartsAndTheirRunner() {
    double area = Clamp.projectedAreaCm2(2, 625, 15);
    assertThat(Clamp.forceKn(area, 4.5, 1)).isCloseTo(5692.5, within(1e-9));
  }

  /** RTP Company, standard molding equipment: 4 to 8 tons per square inch are 55 to 110 N/mm2. */
  @Test
  void tonsPerSquareInch() {
    assertThat(Clamp.knCm2FromShortTonsPerIn2(4) * 10).isCloseTo(55.2, withPercentage(0.1));
    assertThat(Clamp.knCm2FromShortTonsPerIn2(8) * 10).isCloseTo(110.3, withPercentage(0.1));
  }

  /**
   * vulcanmold.com: a press of 250 tons, of which 10 % are lost, holds 112.5 in2 of polyethylene at
   * 2 tons per square inch.
   */
  @Test
  void largestAreaOfAPress() {
    double areaCm2 =
        Clamp.largestAreaCm2(250 * Clamp.SHORT_TON_KN, 0.9, Clamp.knCm2FromShortTonsPerIn2(2));
    assertThat(areaCm2 / Clamp.SQUARE_INCH_CM2).isCloseTo(112.5, within(1e-9));
  }

  /**
   * Own arithmetic: four knobs of 50 mm in PP at 3 kN/cm2 with 12 cm2 of runner and a factor of
   * 1.1.
   */
  @Test
  void factorMultiplies() {
    double area = Clamp.projectedAreaCm2(4, Math.PI * 25 / 4, 12);
    assertThat(Clamp.forceKn(area, 3, 1.1)).isCloseTo(298.8, within(0.05));
  }
}
