package pressweek.reports.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pressweek.data.problem.Colour;

class SwatchTest {
  private static Swatch swatch(String srgb) {
    return Swatch.of(Optional.of(new Colour("", "X", "", srgb, OptionalDouble.empty())));
  }

  @Test
  void inkIsBlackOnLightAndWhiteOnDark() {
    assertThat(swatch("FFFFFF")).isEqualTo(new Swatch("#FFFFFF", "#000000"));
    assertThat(swatch("111214").ink()).isEqualTo("#ffffff");
    assertThat(swatch("F3DA0B").ink()).isEqualTo("#000000");
  }

  /** WCAG 2.1, success criterion 1.4.3, asks for 4.5 to 1. */
  @Test
  void inkStandsOutFromEveryColour() {
    Random random = new Random(1);
    for (int i = 0; i < 5_000; i++) {
      String srgb = String.format(Locale.ROOT, "%06x", random.nextInt(1 << 24));
      double ink = swatch(srgb).ink().equals("#ffffff") ? 1 : 0;
      assertThat(Swatch.contrast(Swatch.luminance(srgb), ink)).as(srgb).isGreaterThan(4.5);
    }
  }

  /** Black on white is 21 to 1 and #777777 on white 4.48 to 1 by WCAG 2.1. */
  @Test
  void contrastIsThatOfWcag() {
    assertThat(Swatch.contrast(Swatch.luminance("ffffff"), Swatch.luminance("000000")))
        .isCloseTo(21, within(1e-9));
    assertThat(Swatch.contrast(Swatch.luminance("ffffff"), Swatch.luminance("777777")))
        .isCloseTo(4.48, within(0.005));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "red", "12345", "1234567", "url(x", "\"><b>1"})
  void colourWithoutAnSrgbValueIsHatched(String srgb) {
    assertThat(swatch(srgb)).isEqualTo(new Swatch("url(#hatch-unknown)", ""));
    assertThat(Swatch.of(Optional.empty())).isEqualTo(swatch(srgb));
  }
}
