package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightnessTest {
  /** The first four: published colour test suites. The others: arithmetic from the same formula. */
  @ParameterizedTest
  @CsvSource({
    "FF0000, 53.2408",
    "00FF00, 87.7347",
    "0000FF, 32.2970",
    "FFFFFF, 100",
    "ffff00, 97.139",
    "C0C0C0, 77.704",
    "808080, 53.585",
    "0A0A0A, 2.742",
    "000000, 0"
  })
  void lightness(String srgb, double expected) {
    assertThat(Lightness.ofSrgb(srgb).orElseThrow()).isCloseTo(expected, within(0.01));
  }

  @Test
  void otherTextHasNone() {
    assertThat(Lightness.ofSrgb("")).isEmpty();
    assertThat(Lightness.ofSrgb("FF00")).isEmpty();
    assertThat(Lightness.ofSrgb("GG0000")).isEmpty();
  }
}
