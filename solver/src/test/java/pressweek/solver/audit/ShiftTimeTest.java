package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Break;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Shift;

/** 1970-01-01, minute 0, was a Thursday. */
class ShiftTimeTest {
  private static final LocalDate DAY = LocalDate.EPOCH;

  private static Shift shift(String name, String from, String to, String... breaks) {
    return new Shift(
        name,
        Set.of(DayOfWeek.THURSDAY),
        LocalTime.parse(from),
        LocalTime.parse(to),
        Arrays.stream(breaks)
            .map(text -> text.split("-"))
            .map(text -> new Break(LocalTime.parse(text[0]), LocalTime.parse(text[1])))
            .toList(),
        1,
        0,
        OptionalInt.empty());
  }

  private static List<ShiftTime> times(List<LocalDate> closed, Shift... shifts) {
    Hours hours = new Hours(ZoneOffset.UTC, 0, 1440, List.of(shifts), List.of(), closed);
    return ShiftTime.all(hours, new Clock(ZoneOffset.UTC), DAY.minusDays(3), DAY.plusDays(3));
  }

  @Test
  void aNightShiftEndsOnTheNextDayAndItsEarlyBreaksAreThere() {
    ShiftTime night =
        times(List.of(), shift("n", "22:00", "06:00", "23:45-00:15", "02:00-02:30", "05:45-06:15"))
            .get(0);
    assertThat(night.span()).isEqualTo(new Span(1320, 1800));
    assertThat(night.breaks())
        .containsExactly(new Span(1425, 1455), new Span(1560, 1590), new Span(1785, 1800));
  }

  @Test
  void aShiftThatEndsWhenItStartsLastsADay() {
    assertThat(times(List.of(), shift("d", "06:00", "06:00")).get(0).span())
        .isEqualTo(new Span(360, 1800));
  }

  @Test
  void noShiftBeginsOnAClosedDay() {
    assertThat(times(List.of(DAY), shift("d", "06:00", "14:00"))).isEmpty();
  }

  @Test
  void aPressWorksInTheShiftsOfItsCalendarLessBreaksAndDowntime() {
    List<ShiftTime> shifts =
        times(
            List.of(),
            shift("a", "06:00", "14:00", "10:00-10:30"),
            shift("b", "13:30", "22:00", "13:45-14:00"),
            shift("other", "00:00", "06:00"));
    Roster roster = new Roster(shifts, List.of(), List.of(), List.of());
    List<Span> down = List.of(new Span(1200, 1230));
    PressTime time = PressTime.of(new Calendar("c", List.of("a", "b")), roster, down);
    // 06:00 to 22:00 are 960 min; breaks of 30 and 15, 30 down.
    assertThat(time.working().minutes(new Span(0, 1440))).isEqualTo(960 - 30 - 15 - 30);
    assertThat(time.stretches().covers(new Span(360, 1200))).isTrue();
    assertThat(time.stretches().covers(new Span(1199, 1231))).isFalse();
    assertThat(time.working().contains(830)).isFalse();
    assertThat(time.working().contains(359)).isFalse();
  }
}
