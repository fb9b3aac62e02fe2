package pressweek.solver.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalTest {
  /** The check values that M. J. Wichura gives with Algorithm AS 241, quoted from memory. */
  @ParameterizedTest
  @CsvSource({
    "0.25, -0.6744897501960817",
    "0.001, -3.090232306167814",
    "1e-20, -9.262340089798408"
  })
  void isAsPublished(double chance, double quantile) {
    assertThat(Normal.quantile(chance)).isCloseTo(quantile, within(1e-14 * 10));
  }

  @Test
  void isOddAndRises() {
    double before = -10;
    for (int i = 1; i < 4096; i++) {
      double chance = i / 4096.0;
      double quantile = Normal.quantile(chance);
      assertThat(quantile).isGreaterThan(before);
      assertThat(quantile).isEqualTo(-Normal.quantile(1 - chance));
      before = quantile;
    }
  }
}
