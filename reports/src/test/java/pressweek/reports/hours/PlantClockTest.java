package pressweek.reports.hours;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;

class PlantClockTest {
  private static final ZoneId ZONE = ZoneId.of("Europe/Amsterdam");
  private static final int MONDAY = at("2026-11-30T06:00");
  private final PlantClock clock = new PlantClock(ZONE, MONDAY);

  private static int at(String local) {
    return PlantClock.minute(LocalDateTime.parse(local).atZone(ZONE));
  }

  @Test
  void isoHasTheOffsetOfItsDay() {
    assertThat(clock.iso(at("2026-12-01T14:00"))).isEqualTo("2026-12-01T14:00+01:00");
    assertThat(clock.iso(at("2026-07-01T14:00"))).isEqualTo("2026-07-01T14:00+02:00");
    assertThat(new PlantClock(ZoneId.of("UTC"), 0).iso(0)).isEqualTo("1970-01-01T00:00+00:00");
  }

  @Test
  void firstSevenDaysNeedNoDate() {
    assertThat(clock.brief(at("2026-11-30T00:00"))).isEqualTo("Mon 00:00");
    assertThat(clock.brief(at("2026-12-06T23:59"))).isEqualTo("Sun 23:59");
    assertThat(clock.brief(at("2026-12-07T00:00"))).isEqualTo("Mon 7 Dec 00:00");
    assertThat(clock.brief(at("2026-11-29T23:59"))).isEqualTo("Sun 29 Nov 23:59");
  }

  @Test
  void farDayHasItsYear() {
    assertThat(clock.moment(at("2025-12-01T08:00"))).isEqualTo("Mon 1 Dec 2025 08:00");
    assertThat(clock.moment(at("2027-01-04T08:00"))).isEqualTo("Mon 4 Jan 08:00");
  }

  @Test
  void repeatedHourSaysWhichOneItIs() {
    int first = PlantClock.minute(ZonedDateTime.parse("2026-10-25T02:30:00+02:00"));
    assertThat(clock.time(first)).isEqualTo("02:30 (+02:00)");
    assertThat(clock.time(first + 60)).isEqualTo("02:30 (+01:00)");
    assertThat(clock.time(first + 120)).isEqualTo("03:30");
  }

  @Test
  void spanNamesTheSecondDayOnlyWhenItIsAnother() {
    assertThat(clock.span(at("2026-12-01T06:00"), at("2026-12-01T09:30")))
        .isEqualTo("Tue 1 Dec 06:00\u201309:30");
    assertThat(clock.span(at("2026-12-01T21:00"), at("2026-12-02T07:00")))
        .isEqualTo("Tue 1 Dec 21:00\u2013Wed 2 Dec 07:00");
  }
}
