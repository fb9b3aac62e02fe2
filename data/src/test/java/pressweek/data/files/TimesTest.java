package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimesTest {
  @Test
  void isoTimesAreRead() {
    Times times = Times.iso();

    assertThat(times.parse("2026-12-01")).contains(new When.Day(LocalDate.of(2026, 12, 1)));
    assertThat(times.parse("2026-12-01T14:00"))
        .contains(new When.Local(LocalDateTime.of(2026, 12, 1, 14, 0)));
    assertThat(times.parse("2026-12-01 14:00:05"))
        .contains(new When.Local(LocalDateTime.of(2026, 12, 1, 14, 0, 5)));
    assertThat(times.parse("2026-12-01T14:00+01:00"))
        .contains(new When.Exact(Instant.parse("2026-12-01T13:00:00Z")));
    assertThat(times.parse("2026-12-01T14:00Z"))
        .contains(new When.Exact(Instant.parse("2026-12-01T14:00:00Z")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-02-29",
        "2026-04-31",
        "2026-12-01T24:00",
        "2026-12-01T14",
        "01.12.2026",
        "tomorrow",
        "2026-1-1",
        ""
      })
  void whatIsNoTimeIsNotRead(String text) {
    assertThat(Times.iso().parse(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "dd.MM.yyyy, 01.12.2026",
    "d.M.yyyy, 1.12.2026",
    "dd.MM.yy, 01.12.26",
    "MM/dd/yyyy, 12/01/2026",
    "dd-MMM-yyyy, 01-dec-2026",
    "yyyyMMdd, 20261201"
  })
  void thePlantsOwnFormatIsRead(String pattern, String text) {
    Times times = Times.of(pattern).orElseThrow();

    assertThat(times.parse(text)).contains(new When.Day(LocalDate.of(2026, 12, 1)));
    assertThat(times.parse(text + " 06:30"))
        .contains(new When.Local(LocalDateTime.of(2026, 12, 1, 6, 30)));
    assertThat(times.parse("2026-12-01")).contains(new When.Day(LocalDate.of(2026, 12, 1)));
  }

  @Test
  void aDateThatDoesNotExistIsNotRead() {
    assertThat(Times.of("dd.MM.yyyy").orElseThrow().parse("31.02.2026")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "HH:mm", "dd.MM", "nonsense", "'x'"})
  void aPatternThatShowsNoDateIsNone(String pattern) {
    assertThat(Times.of(pattern)).isEmpty();
  }

  @Test
  void yearsFarOffAreNotPlausible() {
    assertThat(Times.plausible(new When.Day(LocalDate.of(1989, 12, 31)))).isFalse();
    assertThat(Times.plausible(new When.Day(LocalDate.of(1990, 1, 1)))).isTrue();
    assertThat(Times.plausible(new When.Local(LocalDateTime.of(2199, 12, 31, 23, 59)))).isTrue();
    assertThat(Times.plausible(new When.Exact(Instant.parse("2200-01-01T00:00:00Z")))).isFalse();
  }
}
