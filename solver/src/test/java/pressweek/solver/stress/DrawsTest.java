package pressweek.solver.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawsTest {
  private static final int N = 200_000;

  /** Mean and standard deviation of so many numbers, one a replay. */
  private static double[] moments(ToDoubleFunction<Draws> number) {
    Draws draws = new Draws();
    long key = Draws.key(7, "test", "4711/1");
    double sum = 0;
    double squares = 0;
    for (int r = 0; r < N; r++) {
      double x = number.applyAsDouble(draws.begin(key, r));
      sum += x;
      squares += x * x;
    }
    double mean = sum / N;
    return new double[] {mean, Math.sqrt(squares / N - mean * mean)};
  }

  @ParameterizedTest
  @CsvSource({"0.05", "0.25", "1.0"})
  void lognormalHasMeanOneAndItsSpread(double spread) {
    double[] found = moments(d -> d.lognormal(spread));
    assertThat(found[0]).isCloseTo(1, within(4 * spread / Math.sqrt(N)));
    assertThat(found[1]).isCloseTo(spread, within(0.04 * spread));
  }

  @ParameterizedTest
  @CsvSource({"0.03, 0.5", "0.03, 2.0", "0.2, 0.3", "0.6, 0.1"})
  void betaHasItsMeanAndSpread(double mean, double spread) {
    double[] found = moments(d -> d.beta(mean, spread));
    assertThat(found[0]).isCloseTo(mean, within(4 * mean * spread / Math.sqrt(N)));
    assertThat(found[1]).isCloseTo(mean * spread, within(0.02 * mean * spread));
  }

  @Test
  void betaThatCannotSpreadSoFarStaysAShare() {
    double[] found = moments(d -> d.beta(0.9, 3));
    assertThat(found[0]).isCloseTo(0.9, within(0.003));
    assertThat(found[1]).isCloseTo(Math.sqrt(0.9 * 0.1 / 2), within(0.003));
    assertThat(new Draws().begin(1, 1).beta(0, 0.5)).isZero();
  }

  @Test
  void exponentialHasMeanAndSpreadOne() {
    double[] found = moments(Draws::exponential);
    assertThat(found[0]).isCloseTo(1, within(4 / Math.sqrt(N)));
    assertThat(found[1]).isCloseTo(1, within(0.02));
  }

  @Test
  void spreadlessIsExactlyOne() {
    assertThat(new Draws().begin(3, 4).lognormal(0)).isEqualTo(1);
  }

  @Test
  void aThingsNumbersDependOnNothingElse() {
    Draws draws = new Draws();
    long mine = Draws.key(1, "cycle", "1/1");
    double first = draws.begin(mine, 5).normal();
    draws.begin(Draws.key(1, "cycle", "1/2"), 5).normal();
    draws.begin(mine, 6).normal();
    assertThat(draws.begin(mine, 5).normal()).isEqualTo(first);
    assertThat(draws.begin(mine, 6).normal()).isNotEqualTo(first);
    assertThat(Draws.key(1, "scrap", "1/1")).isNotEqualTo(mine);
    assertThat(Draws.key(2, "cycle", "1/1")).isNotEqualTo(mine);
  }

  /** Numbers of neighbouring replays and of neighbouring ids are not alike. */
  @Test
  void neighboursDoNotMoveTogether() {
    Draws draws = new Draws();
    double replays = 0;
    double ids = 0;
    for (int r = 0; r < N; r++) {
      long key = Draws.key(1, "cycle", r + "/1");
      double x = draws.begin(key, r).normal();
      replays += x * draws.begin(key, r + 1).normal();
      ids += x * draws.begin(Draws.key(1, "cycle", r + 1 + "/1"), r).normal();
    }
    assertThat(replays / N).isCloseTo(0, within(4 / Math.sqrt(N)));
    assertThat(ids / N).isCloseTo(0, within(4 / Math.sqrt(N)));
  }
}
