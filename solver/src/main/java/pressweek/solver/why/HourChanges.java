package pressweek.solver.why;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Shift;

/** What a plant could change about shifts and the people in them. */
final class HourChanges {
  private static final int PERSON = 1000;

  private final Problem problem;
  private final Hours hours;

  HourChanges(Problem problem) {
    this.problem = problem;
    hours = problem.plant().hours();
  }

  /** One more setter in every shift of a name. */
  PlantChange setter(String shift) {
    return people(
        "one more setter in shift " + shift,
        shift,
        s -> with(s, s.setters() + 1, s.operatorThousandths(), s.inspectors()));
  }

  /** One more operator. */
  PlantChange operator(String shift) {
    return people(
        "one more operator in shift " + shift,
        shift,
        s -> with(s, s.setters(), s.operatorThousandths() + PERSON, s.inspectors()));
  }

  /** One more inspector. */
  PlantChange inspector(String shift) {
    return people(
        "one more inspector in shift " + shift,
        shift,
        s ->
            with(
                s,
                s.setters(),
                s.operatorThousandths(),
                OptionalInt.of(s.inspectors().orElse(0) + 1)));
  }

  private PlantChange people(String words, String shift, UnaryOperator<Shift> change) {
    return new PlantChange(words, Edit.shifts(problem, shift, change));
  }

  private static Shift with(Shift s, int setters, int operators, OptionalInt inspectors) {
    return new Shift(
        s.name(), s.days(), s.from(), s.to(), s.breaks(), setters, operators, inspectors);
  }

  /** Names of the shifts in the house at a minute, those with most hours in the week first. */
  List<String> shiftsAt(int minute) {
    return new ShiftClock(hours).at(minute).stream().map(Shift::name).distinct().toList();
  }

  /**
   * Another shift for a press: one that the plant has and the press does not work; else its own
   * shifts on the next day of the week on which it works none.
   */
  List<PlantChange> another(Press press) {
    List<String> own = names(press.calendar());
    List<PlantChange> changes = new ArrayList<>();
    for (Shift shift : hours.shifts()) {
      if (!own.contains(shift.name())) {
        changes.add(works(press, own, shift));
      }
    }
    if (changes.isEmpty()) {
      day(press, own).ifPresent(changes::add);
    }
    return changes;
  }

  private PlantChange works(Press press, List<String> own, Shift shift) {
    List<String> all = new ArrayList<>(own);
    all.add(shift.name());
    return onCalendar("shift " + shift.name() + " for " + press.id(), press, all, hours.shifts());
  }

  private Optional<PlantChange> day(Press press, List<String> own) {
    Set<DayOfWeek> worked = EnumSet.noneOf(DayOfWeek.class);
    List<Shift> shifts = hours.shifts().stream().filter(s -> own.contains(s.name())).toList();
    shifts.forEach(s -> worked.addAll(s.days()));
    return EnumSet.complementOf(EnumSet.copyOf(worked)).stream()
        .filter(d -> !worked.isEmpty())
        .findFirst()
        .map(d -> day(press, shifts, d));
  }

  private PlantChange day(Press press, List<Shift> shifts, DayOfWeek day) {
    List<Shift> all = new ArrayList<>(hours.shifts());
    List<String> names = new ArrayList<>(names(press.calendar()));
    for (Shift s : shifts) {
      String name = s.name() + " on " + word(day);
      all.add(
          new Shift(
              name,
              EnumSet.of(day),
              s.from(),
              s.to(),
              s.breaks(),
              s.setters(),
              s.operatorThousandths(),
              s.inspectors()));
      names.add(name);
    }
    return onCalendar(
        "the shifts of " + press.id() + " on " + word(day) + ", too", press, names, all);
  }

  private static String word(DayOfWeek day) {
    return day.name().charAt(0) + day.name().substring(1).toLowerCase(Locale.ROOT);
  }

  private PlantChange onCalendar(
      String words, Press press, List<String> names, List<Shift> shifts) {
    String id = "for " + press.id();
    List<Calendar> calendars = new ArrayList<>(hours.calendars());
    calendars.add(new Calendar(id, names));
    List<Press> presses =
        problem.floor().presses().stream()
            .map(p -> p.id().equals(press.id()) ? on(p, id) : p)
            .toList();
    return new PlantChange(words, Edit.presses(Edit.hours(problem, shifts, calendars), presses));
  }

  private static Press on(Press p, String calendar) {
    return new Press(p.id(), p.cell(), p.build(), p.size(), calendar, p.food(), p.ratePerHour());
  }

  private List<String> names(String calendar) {
    return hours.calendars().stream()
        .filter(c -> c.id().equals(calendar))
        .findFirst()
        .map(Calendar::shifts)
        .orElseGet(() -> hours.shifts().stream().map(Shift::name).toList());
  }
}
