package pressweek.data.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordsTest {
  @Test
  void amountsAreRoundedForReading() {
    assertThat(Words.amount(618.75)).isEqualTo("619");
    assertThat(Words.amount(1200)).isEqualTo("1200");
    assertThat(Words.amount(71.34)).isEqualTo("71.3");
    assertThat(Words.amount(80)).isEqualTo("80");
    assertThat(Words.amount(0.756)).isEqualTo("0.76");
    assertThat(Words.amount(0)).isEqualTo("0");
  }

  @Test
  void longListsAreCutAndCounted() {
    assertThat(Words.few(List.of("A", "B"), 2)).isEqualTo("A, B");
    assertThat(Words.few(List.of("A", "B", "C"), 2)).isEqualTo("A, B and 1 more");
  }

  @Test
  void textThatIsNoNumberHasNone() {
    assertThat(Words.number("12.5").orElseThrow()).isEqualTo(12.5);
    assertThat(Words.number("12,5")).isEmpty();
    assertThat(Words.number("")).isEmpty();
    assertThat(Words.number("1e9")).isEmpty();
  }
}
