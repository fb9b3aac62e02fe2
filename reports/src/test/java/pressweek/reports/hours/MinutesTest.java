package pressweek.reports.hours;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MinutesTest {
  @Test
  void partsThatAreNoughtAreLeftOut() {
    assertThat(Minutes.words(0)).isEqualTo("0 min");
    assertThat(Minutes.words(59)).isEqualTo("59 min");
    assertThat(Minutes.words(60)).isEqualTo("1 h");
    assertThat(Minutes.words(1_440 + 65)).isEqualTo("1 d 1 h 5 min");
    assertThat(Minutes.words(2_880)).isEqualTo("2 d");
  }

  @Test
  void workedTimeHasNoDays() {
    assertThat(Minutes.hours(2_300)).isEqualTo("38 h 20 min");
    assertThat(Minutes.hours(0)).isEqualTo("0 min");
  }
}
