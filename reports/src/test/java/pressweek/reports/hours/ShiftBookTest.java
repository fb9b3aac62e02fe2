package pressweek.reports.hours;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Break;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Shift;

class ShiftBookTest {
  private static final ZoneId ZONE = ZoneId.of("Europe/Amsterdam");

  private static int at(String local) {
    return PlantClock.minute(LocalDateTime.parse(local).atZone(ZONE));
  }

  private static Shift daily(String name, String from, String to, int setters) {
    return new Shift(
        name,
        Set.of(DayOfWeek.values()),
        LocalTime.parse(from),
        LocalTime.parse(to),
        List.of(),
        setters,
        1_000,
        OptionalInt.empty());
  }

  private static ShiftBook book(String from, String to, List<LocalDate> closed, Shift... shifts) {
    Hours hours =
        new Hours(
            ZONE,
            at(from),
            at(to),
            List.of(shifts),
            List.of(new Calendar("days", List.of("early"))),
            closed);
    return ShiftBook.of(hours, new Span(at(from), at(to)));
  }

  @Test
  void nightIsAnHourShorterInSpringAndLongerInAutumn() {
    Shift night = daily("night", "22:00", "06:00", 1);
    ShiftBook spring = book("2026-03-28T20:00", "2026-03-29T12:00", List.of(), night);
    ShiftBook autumn = book("2026-10-24T20:00", "2026-10-25T12:00", List.of(), night);
    assertThat(spring.all().get(0).span().minutes()).isEqualTo(7 * 60);
    assertThat(autumn.all().get(0).span().minutes()).isEqualTo(9 * 60);
    assertThat(spring.all().get(0).id()).isEqualTo("2026-03-28 night");
  }

  @Test
  void breakBeforeTheHourOfTheStartIsOnTheNextDay() {
    Shift night =
        new Shift(
            "night",
            Set.of(DayOfWeek.values()),
            LocalTime.of(22, 0),
            LocalTime.of(6, 0),
            List.of(
                new Break(LocalTime.of(2, 0), LocalTime.of(2, 30)),
                new Break(LocalTime.of(23, 45), LocalTime.of(0, 0))),
            1,
            1_000,
            OptionalInt.empty());
    ShiftBook book = book("2026-11-30T20:00", "2026-12-01T12:00", List.of(), night);
    assertThat(book.breaks(book.all().get(0)))
        .containsExactly(
            new Span(at("2026-11-30T23:45"), at("2026-12-01T00:00")),
            new Span(at("2026-12-01T02:00"), at("2026-12-01T02:30")));
  }

  @Test
  void startThatAClockChangeSkipsIsTheFirstInstantAfterTheGap() {
    ShiftBook book =
        book(
            "2026-03-29T00:00",
            "2026-03-29T12:00",
            List.of(),
            daily("small hours", "02:30", "06:00", 1));
    int after = PlantClock.minute(ZonedDateTime.parse("2026-03-29T03:00:00+02:00"));
    assertThat(book.all().get(0).span().fromMin()).isEqualTo(after);
  }

  @Test
  void noShiftBeginsOnAClosedDay() {
    ShiftBook book =
        book(
            "2026-12-24T00:00",
            "2026-12-26T23:00",
            List.of(LocalDate.of(2026, 12, 25)),
            daily("early", "06:00", "14:00", 1));
    assertThat(book.all())
        .extracting(ShiftSpan::id)
        .containsExactly("2026-12-24 early", "2026-12-26 early");
  }

  @Test
  void unknownCalendarIsAllShifts() {
    ShiftBook book =
        book(
            "2026-12-01T00:00",
            "2026-12-01T23:00",
            List.of(),
            daily("early", "06:00", "14:00", 1),
            daily("late", "14:00", "22:00", 0));
    assertThat(book.ofCalendar("days")).extracting(ShiftSpan::shift).containsExactly("early");
    assertThat(book.ofCalendar("")).extracting(ShiftSpan::shift).containsExactly("early", "late");
    assertThat(book.withSetters()).containsExactly("early");
  }

  @Test
  void earlierTestWinsBetweenShiftsAtOnce() {
    ShiftBook book =
        book(
            "2026-12-01T00:00",
            "2026-12-01T23:00",
            List.of(),
            daily("early", "06:00", "14:00", 1),
            daily("day", "07:00", "16:00", 1));
    int ten = at("2026-12-01T10:00");
    assertThat(book.at(ten, List.of(s -> s.shift().equals("day"), s -> true)))
        .map(ShiftSpan::shift)
        .hasValue("day");
    assertThat(book.at(ten, List.of(s -> s.shift().equals("none"), s -> true)))
        .map(ShiftSpan::shift)
        .hasValue("early");
    assertThat(book.at(at("2026-12-01T05:00"), List.of(s -> true))).isEmpty();
  }

  @Test
  void shiftBeforeEndedByThenAndShiftAfterStartsThen() {
    ShiftBook book =
        book(
            "2026-12-01T00:00", "2026-12-02T23:00", List.of(), daily("early", "06:00", "14:00", 1));
    assertThat(book.before(at("2026-12-01T14:00"))).map(ShiftSpan::id).hasValue("2026-12-01 early");
    assertThat(book.before(at("2026-12-01T13:59"))).isEmpty();
    assertThat(book.after(at("2026-12-01T06:01"))).map(ShiftSpan::id).hasValue("2026-12-02 early");
    assertThat(book.all().get(0).heading()).isEqualTo("Tue 1 Dec, early");
  }
}
