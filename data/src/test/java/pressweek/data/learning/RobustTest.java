package pressweek.data.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RobustTest {
  /**
   * The depression scale factor of nine patients before and after the start of a therapy: M.
   * Hollander, D. A. Wolfe, Nonparametric Statistical Methods, table 3.1; their estimate of the
   * shift is -0.46, its interval of 96.1 % is -0.786 to -0.010.
   */
  @Test
  void theMiddleAndItsIntervalAreThoseOfHollanderAndWolfe() {
    double[] before = {1.83, .50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30};
    double[] after = {.878, .647, .598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29};
    double[] shift = new double[before.length];
    Arrays.setAll(shift, i -> after[i] - before[i]);

    Robust found = Robust.of(shift);

    assertThat(found.n()).isEqualTo(9);
    assertThat(found.middle()).isCloseTo(-0.46, within(1e-9));
    assertThat(found.low()).isCloseTo(-0.786, within(1e-9));
    assertThat(found.high()).isCloseTo(-0.010, within(1e-9));
  }

  /**
   * 24 determinations of copper in wholemeal flour, with a wild one: Analytical Methods Committee,
   * Analyst 114 (1989) 1693-1697; median 3.385 and scaled median absolute deviation 0.526 as W. N.
   * Venables and B. D. Ripley print them (Modern Applied Statistics with S, chapter 5).
   */
  @Test
  void medianAndDeviationAreThoseOfTheCopperData() {
    double[] copper = {
      2.20, 2.20, 2.40, 2.40, 2.50, 2.70, 2.80, 2.90, 3.03, 3.03, 3.10, 3.37, 3.40, 3.40, 3.40,
      3.50, 3.60, 3.70, 3.70, 3.70, 3.70, 3.77, 5.28, 28.95
    };
    assertThat(Robust.median(copper)).isCloseTo(3.385, within(1e-9));
    assertThat(Robust.of(copper).spread()).isCloseTo(0.526, within(0.0005));
  }

  /** For large n the interval by the normal distribution comes to the exact one. */
  @Test
  void theIntervalChangesLittleWhereItIsNoLongerExact() {
    double[] fifty = new double[50];
    Arrays.setAll(fifty, i -> i * i);
    double[] one = Arrays.copyOf(fifty, 51);
    one[50] = Robust.of(fifty).middle();
    Robust exact = Robust.of(fifty);
    Robust near = Robust.of(one);
    assertThat(near.low()).isCloseTo(exact.low(), within(0.06 * exact.low()));
    assertThat(near.high()).isCloseTo(exact.high(), within(0.03 * exact.high()));
  }

  @Test
  void oneValueIsItsOwnMiddleAndHasNoSpread() {
    assertThat(Robust.of(new double[] {7})).isEqualTo(new Robust(1, 7, 7, 7, 0));
  }

  @Test
  void aWildValueMovesNothingMuch() {
    double[] calm = {40, 41, 42, 43, 44, 45, 46, 47, 48};
    double[] wild = {40, 41, 42, 43, 44, 45, 46, 47, 4800};
    assertThat(Robust.of(wild).middle()).isCloseTo(Robust.of(calm).middle(), within(0.6));
    assertThat(Robust.of(wild).spread()).isEqualTo(Robust.of(calm).spread());
  }

  @Test
  void onlyTheLastThousandCount() {
    double[] values = new double[Robust.MOST + 500];
    Arrays.fill(values, 500, values.length, 3);
    assertThat(Robust.of(values)).isEqualTo(new Robust(Robust.MOST, 3, 3, 3, 0));
  }
}
