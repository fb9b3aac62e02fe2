package pressweek.data.problem;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A shift that repeats every week.
 *
 * @param name name of the shift
 * @param days days on which it begins
 * @param from local time when it begins
 * @param to local time when it ends; not after {@code from} means on the next day
 * @param breaks pauses in which presses stand and setters rest
 * @param setters setters in the house
 * @param operatorThousandths operators in the house, thousandths of a person
 * @param inspectors inspectors in the house who do first-article checks; empty when the plant does
 *     not say
 */
public record Shift(
    String name,
    Set<DayOfWeek> days,
    LocalTime from,
    LocalTime to,
    List<Break> breaks,
    int setters,
    int operatorThousandths,
    OptionalInt inspectors) {
  public Shift {
    days = Set.copyOf(days);
    breaks = List.copyOf(breaks);
  }
}
