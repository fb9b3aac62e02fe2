package pressweek.data.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceTest {
  /**
   * R. G. Newcombe, Statistics in Medicine 17 (1998) 857-872, table I, method 3 (score, no
   * continuity correction); values quoted from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0.0000, 0.1611",
    "1, 29, 0.0061, 0.1718"
  })
  void isTheScoreInterval(int hits, int replays, double low, double high) {
    Chance chance = Chance.of(hits, replays);
    assertThat(chance.low()).isCloseTo(low, within(0.00005));
    assertThat(chance.high()).isCloseTo(high, within(0.00005));
  }

  @Test
  void allOrNoneReachesTheEnd() {
    assertThat(Chance.of(0, 7).low()).isZero();
    assertThat(Chance.of(7, 7).high()).isEqualTo(1);
    assertThat(Chance.of(7, 7).low()).isCloseTo(1 - Chance.of(0, 7).high(), within(1e-12));
  }

  @Test
  void moreHitsThanReplaysAreRefused() {
    assertThatThrownBy(() -> Chance.of(3, 2)).hasMessage("3 of 2 replays");
  }

  @Test
  void anEstimateHasItsMeanInTheMiddle() {
    Estimate estimate = Estimate.of(new double[] {1, 2, 3, 4});
    // standard deviation 1.29099, divided by 2, times 1.95996
    assertThat(estimate.mean()).isEqualTo(2.5);
    assertThat(estimate.low()).isCloseTo(2.5 - 1.26515, within(0.00001));
    assertThat(estimate.high()).isCloseTo(2.5 + 1.26515, within(0.00001));
    assertThat(estimate.isSure()).isTrue();
    assertThat(Estimate.of(new double[] {-1, 1}).isSure()).isFalse();
    assertThat(Estimate.of(new double[] {5}).low()).isEqualTo(5);
  }
}
