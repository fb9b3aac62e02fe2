package pressweek.data.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class WhenTest {
  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
  private static final LocalTime CUT_OFF = LocalTime.of(15, 0);

  private static int minute(String instant) {
    return (int) (Instant.parse(instant).getEpochSecond() / 60);
  }

  @Test
  void aDateIsTheTimeOfDayThatItStandsFor() {
    When day = new When.Day(LocalDate.of(2026, 12, 1));

    assertThat(day.minute(BERLIN, CUT_OFF)).isEqualTo(minute("2026-12-01T14:00:00Z"));
    assertThat(day.minute(BERLIN, LocalTime.MIN)).isEqualTo(minute("2026-11-30T23:00:00Z"));
  }

  @Test
  void aLocalTimeIsThePlants() {
    When local = new When.Local(LocalDateTime.of(2026, 7, 1, 6, 0, 59));

    assertThat(local.minute(BERLIN, CUT_OFF)).isEqualTo(minute("2026-07-01T04:00:00Z"));
  }

  @Test
  void anExactTimeIsItself() {
    assertThat(new When.Exact(Instant.parse("2026-12-01T14:00:30Z")).minute(BERLIN, CUT_OFF))
        .isEqualTo(minute("2026-12-01T14:00:00Z"));
  }

  @Test
  void aTimeThatTheClocksSkipIsTheFirstAfterTheGap() {
    // Clocks go from 02:00 to 03:00 on 2026-03-29.
    for (LocalTime skipped :
        new LocalTime[] {LocalTime.of(2, 0), LocalTime.of(2, 30), LocalTime.of(2, 59)}) {
      assertThat(new When.Local(LocalDate.of(2026, 3, 29).atTime(skipped)).minute(BERLIN, CUT_OFF))
          .isEqualTo(minute("2026-03-29T01:00:00Z"));
    }
    assertThat(new When.Local(LocalDateTime.of(2026, 3, 29, 1, 59)).minute(BERLIN, CUT_OFF))
        .isEqualTo(minute("2026-03-29T00:59:00Z"));
  }

  @Test
  void aTimeThatOccursTwiceIsTheFirst() {
    // Clocks go from 03:00 back to 02:00 on 2026-10-25.
    assertThat(new When.Local(LocalDateTime.of(2026, 10, 25, 2, 30)).minute(BERLIN, CUT_OFF))
        .isEqualTo(minute("2026-10-25T00:30:00Z"));
  }
}
