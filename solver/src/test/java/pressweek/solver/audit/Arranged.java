package pressweek.solver.audit;

import static pressweek.solver.audit.Parts.at;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import pressweek.data.plan.Charge;
import pressweek.data.plan.PlantWide;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Break;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Shift;

/** Arrangements and decisions for the plant as a whole with only what a test cares for. */
final class Arranged {
  private Arranged() {}

  /** The problem with one thing arranged: by path in its arrangements. */
  static Problem set(Problem problem, String path, Object value) {
    return problem.with(Edited.set(problem.arranged(), path, value));
  }

  /** Everything else as none, but this. */
  static Arrangements only(String path, Object value) {
    return Edited.set(Arrangements.NONE, path, value);
  }

  /** The problem with a further shift on weekdays, which the calendar {@code two} works, too. */
  static Problem shift(Problem problem, String name, String fromTo, String... breaks) {
    Set<DayOfWeek> weekdays = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    List<Break> pauses =
        Arrays.stream(breaks).map(each -> new Break(time(each, 0), time(each, 1))).toList();
    Shift shift =
        new Shift(
            name, weekdays, time(fromTo, 0), time(fromTo, 1), pauses, 1, 1000, OptionalInt.empty());
    Problem more = Edited.edit(problem, "plant.hours.shifts", Edited.with(2, shift));
    Calendar two = new Calendar("two", List.of("early", "late", name));
    return Edited.set(more, "plant.hours.calendars[two]", two);
  }

  private static LocalTime time(String fromTo, int part) {
    return LocalTime.parse(fromTo.split("-")[part]);
  }

  /**
   * An overtime shift of the week by name, start and end, for example {@code "night", "Mon 22:00",
   * "Tue 02:00"}.
   */
  static PlantWide.Opened opened(String shift, String from, String to) {
    return new PlantWide.Opened(shift, at(from), at(to));
  }

  /** Overtime at 60.00 an hour. */
  static Opening overtime(String... shifts) {
    return new Opening(
        Arrays.stream(shifts).map(name -> new Opening.Overtime(name, 6_000_000)).toList(),
        List.of());
  }

  static PlantWide opening(List<PlantWide.Opened> opened, Charge... charges) {
    return Edited.set(Edited.set(PlantWide.NONE, "opened", opened), "charges", List.of(charges));
  }
}
