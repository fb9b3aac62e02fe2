package pressweek.data.molding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LetDownTest {
  private static LetDown read(String text) {
    LetDown.Reading reading = LetDown.read(text);
    assertThat(reading).isInstanceOf(LetDown.Reading.Good.class);
    return ((LetDown.Reading.Good) reading).letDown();
  }

  /**
   * kananipigment.com, loading guide: 30 % masterbatch at 1:50 is 0.59 % pigment, 25 % at 1:100 is
   * 0.25 %; 0.005 points.
   */
  @Test
  void pigmentInThePart() {
    assertThat(100 * read("1:50").pigmentFraction(0.30)).isCloseTo(0.59, within(0.005));
    assertThat(100 * read("1:100").pigmentFraction(0.25)).isCloseTo(0.25, within(0.005));
  }

  /** Own arithmetic: masterbatch in 326.7 kg; 0.1 %. */
  @ParameterizedTest
  @CsvSource({"25:1, 12.57", "1:25, 12.57", "50:1, 6.41", "4 %, 13.07", "4, 13.07", "4%, 13.07"})
  void masterbatchOfARun(String text, double kg) {
    assertThat(read(text).masterbatchKg(326.7)).isCloseTo(kg, withPercentage(0.1));
  }

  @ParameterizedTest
  @CsvSource({
    "25:1, 3.846",
    "1 : 25, 3.846",
    "100:4, 3.846",
    "1:1, 50",
    "' 100 ', 100",
    "0.5, 0.5"
  })
  void shareOfTheTotal(String text, double pct) {
    assertThat(read(text).pct()).isCloseTo(pct, within(0.001));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          400     | "400" is more than the whole
          0       | "0" is no masterbatch
          -4      | "-4" is no masterbatch
          0:25    | "0:25" has a part of 0
          0:0     | "0:0" has a part of 0
          25:     | "25:" is not a let-down
          25:1:1  | "25:1:1" is not a let-down
          -25:1   | "-25:1" is not a let-down
          1/25    | "1/25" is not a let-down
          ''      | "" is not a let-down
          """)
  void textThatIsNoneSaysWhatIsExpected(String text, String seen) {
    LetDown.Reading reading = LetDown.read(text);
    assertThat(reading)
        .isEqualTo(
            new LetDown.Reading.Bad(
                seen
                    + "; expected percent of the total mass above 0 and up to 100, as 4, or a ratio,"
                    + " as 25:1"));
  }

  @Test
  void fractionIsAboveNothingAndAtMostAll() {
    assertThatThrownBy(() -> new LetDown(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LetDown(1.01)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LetDown(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
  }
}
