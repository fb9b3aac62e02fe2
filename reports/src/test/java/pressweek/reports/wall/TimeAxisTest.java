package pressweek.reports.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.hours.Span;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.wall.TimeAxis.Band;

class TimeAxisTest {
  private static final int START = SampleWeek.START;
  private static final int DAY = 24 * 60;
  private static final Span WEEK = new Span(START, START + 7 * DAY);
  private final PlantClock clock = new PlantClock(SampleWeek.ZONE, START);

  private static List<Span> days(int count, int hours) {
    List<Span> days = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      days.add(new Span(START + i * DAY, START + i * DAY + hours * 60));
    }
    return days;
  }

  @Test
  void twoShiftWeekIsAsWideAsAScreen() {
    TimeAxis axis = TimeAxis.of(WEEK, days(5, 16));
    assertThat(axis.width()).isCloseTo(TimeAxis.TARGET, within(0.01));
    assertThat(axis.bands(clock)).hasSize(1);
  }

  @Test
  void longWeekIsMadeToFitAsLongAsItCanBeRead() {
    TimeAxis six = TimeAxis.of(WEEK, days(6, 17));
    assertThat(six.width()).isCloseTo(TimeAxis.TARGET, within(0.01));
    TimeAxis seven = TimeAxis.of(WEEK, days(7, 17));
    assertThat(seven.x(START + 60)).isEqualTo(12);
    assertThat(seven.bands(clock)).hasSize(2);
  }

  @Test
  void timeInWhichNoPressWorksIsNarrow() {
    TimeAxis axis = TimeAxis.of(WEEK, days(5, 16));
    double day = axis.x(START + 16 * 60) - axis.x(START);
    double night = axis.x(START + DAY) - axis.x(START + 16 * 60);
    assertThat(night).isEqualTo(14);
    assertThat(day).isGreaterThan(190);
  }

  @Test
  void laterMinutesNeverStandFurtherLeft() {
    TimeAxis axis = TimeAxis.of(WEEK, days(5, 16));
    double before = -1;
    for (int minute = START; minute <= WEEK.toMin(); minute += 7) {
      assertThat(axis.x(minute)).isGreaterThan(before);
      before = axis.x(minute);
    }
  }

  @Test
  void whatIsBeyondTheAxisStandsAtItsEdge() {
    TimeAxis axis = TimeAxis.of(WEEK, days(5, 16));
    assertThat(axis.x(START - 999)).isZero();
    assertThat(axis.x(WEEK.toMin() + 999)).isEqualTo(axis.width());
  }

  @Test
  void shortPauseIsNotNarrow() {
    Span day = new Span(START, START + DAY);
    List<Span> working = List.of(new Span(START, START + 600), new Span(START + 689, START + DAY));
    assertThat(TimeAxis.of(day, working).pieces()).hasSize(1);
    List<Span> apart = List.of(new Span(START, START + 600), new Span(START + 690, START + DAY));
    assertThat(TimeAxis.of(day, apart).pieces()).hasSize(3);
  }

  @Test
  void roundTheClockIsCutAtMidnightsIntoBandsThatFit() {
    TimeAxis axis = TimeAxis.of(WEEK, List.of(WEEK));
    List<Band> bands = axis.bands(clock);
    assertThat(bands).hasSizeGreaterThan(1).allMatch(b -> b.width() <= TimeAxis.TARGET);
    assertThat(bands.get(0).span().fromMin()).isEqualTo(START);
    for (int i = 1; i < bands.size(); i++) {
      int cut = bands.get(i).span().fromMin();
      assertThat(cut).isEqualTo(bands.get(i - 1).span().toMin());
      assertThat(clock.time(cut)).isEqualTo("00:00");
      assertThat(bands.get(i).x())
          .isCloseTo(bands.get(i - 1).x() + bands.get(i - 1).width(), within(0.001));
    }
    assertThat(bands.get(bands.size() - 1).span().toMin()).isEqualTo(WEEK.toMin());
  }

  @Test
  void plantThatNeverWorksHasAnAxis() {
    TimeAxis axis = TimeAxis.of(WEEK, List.of());
    assertThat(axis.width()).isPositive();
    assertThat(axis.bands(clock)).hasSize(1);
  }
}
