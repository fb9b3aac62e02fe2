package pressweek.solver;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import pressweek.data.problem.Break;
import pressweek.data.problem.Shift;

/** Shifts of drawn plants. */
final class RandomShifts {
  private RandomShifts() {}

  static List<Shift> of(boolean rules, int presses) {
    if (!rules) {
      return List.of(
          new Shift(
              "early",
              EnumSet.allOf(DayOfWeek.class),
              LocalTime.MIDNIGHT,
              LocalTime.MIDNIGHT,
              List.of(),
              99,
              99_000,
              OptionalInt.empty()),
          new Shift(
              "late",
              EnumSet.noneOf(DayOfWeek.class),
              LocalTime.of(1, 0),
              LocalTime.of(2, 0),
              List.of(),
              0,
              0,
              OptionalInt.empty()));
    }
    EnumSet<DayOfWeek> week = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    int setters = Math.max(1, presses / 4);
    int operators = Math.max(1, presses / 3) * 1000;
    return List.of(
        new Shift(
            "early",
            week,
            LocalTime.of(6, 0),
            LocalTime.of(14, 0),
            List.of(new Break(LocalTime.of(10, 0), LocalTime.of(10, 30))),
            setters + 1,
            operators,
            OptionalInt.empty()),
        new Shift(
            "late",
            week,
            LocalTime.of(14, 0),
            LocalTime.of(22, 0),
            List.of(new Break(LocalTime.of(18, 0), LocalTime.of(18, 30))),
            Math.max(1, setters - 1),
            operators,
            OptionalInt.empty()),
        new Shift(
            "saturday",
            EnumSet.of(DayOfWeek.SATURDAY),
            LocalTime.of(6, 0),
            LocalTime.of(14, 0),
            List.of(),
            1,
            operators / 2 + 500,
            OptionalInt.empty()));
  }
}
