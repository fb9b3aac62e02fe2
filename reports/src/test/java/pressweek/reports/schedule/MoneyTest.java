package pressweek.reports.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pressweek.reports.sample.SampleWeek;

class MoneyTest {
  @Test
  void thousandthsOfACentAreRoundedToCents() {
    assertThat(Money.figure(0)).isEqualTo("0.00");
    assertThat(Money.figure(499)).isEqualTo("0.00");
    assertThat(Money.figure(500)).isEqualTo("0.01");
    assertThat(Money.figure(123_450_000)).isEqualTo("1,234.50");
    assertThat(Money.figure(-100_000)).isEqualTo("-1.00");
  }

  @Test
  void currencyStandsInFront() {
    assertThat(Money.words(SampleWeek.plant("", true).rates(), 100_000)).isEqualTo("EUR 1.00");
  }
}
