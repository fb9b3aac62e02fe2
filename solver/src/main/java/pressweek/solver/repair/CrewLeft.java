package pressweek.solver.repair;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pressweek.data.files.EventKind;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Break;
import pressweek.data.problem.Person;
import pressweek.data.problem.Shift;
import pressweek.solver.repair.PressHours.OnDay;

/**
 * Shifts with the people who are left. A shift of whose people some are away is parted into one a
 * weekday and, on that day, at the minutes at which they go and come back; the parts keep its name,
 * so that calendars and people still find it. Shifts repeat by the week: where the horizon is
 * longer, the same weekday of a later week has the same people.
 */
final class CrewLeft {
  private static final int PERSON = 1000;

  private final Plan plan;
  private final ZoneId zone;
  private final int nowMin;
  private final List<FloorEvent> away;

  private CrewLeft(Plan plan, List<FloorEvent> events, int nowMin) {
    this.plan = plan;
    this.nowMin = nowMin;
    zone = plan.problem().plant().hours().zone();
    away = events.stream().filter(e -> e.kind() == EventKind.PERSON_AWAY).toList();
  }

  /** The shifts of a plan less the people who are away from now on. */
  static List<Shift> of(Plan plan, List<FloorEvent> events, int nowMin) {
    CrewLeft left = new CrewLeft(plan, events, nowMin);
    List<OnDay> days = new PressHours(plan).days();
    List<Shift> shifts = new ArrayList<>();
    for (Shift shift : plan.problem().plant().hours().shifts()) {
      List<OnDay> touched =
          days.stream().filter(d -> d.shift().equals(shift) && left.touches(d)).toList();
      shifts.addAll(left.parted(shift, touched));
    }
    return shifts;
  }

  private boolean touches(OnDay day) {
    return away.stream().anyMatch(e -> missing(day.shift(), e) && overlaps(day, e));
  }

  private boolean overlaps(OnDay day, FloorEvent event) {
    int from = Math.max(day.span().from(), nowMin);
    return event.fromMin() < day.span().to() && from < event.toMin();
  }

  /** True when the event takes somebody out of a shift of that name. */
  private boolean missing(Shift shift, FloorEvent event) {
    return role(event).isPresent()
        && (isRole(event)
            || person(event).filter(p -> p.shifts().contains(shift.name())).isPresent());
  }

  private static boolean isRole(FloorEvent event) {
    return event.what().equals("setter") || event.what().equals("operator");
  }

  private Optional<Person> person(FloorEvent event) {
    return plan.problem().plant().crew().people().orElse(List.of()).stream()
        .filter(p -> p.name().equals(event.what()))
        .findFirst();
  }

  private Optional<Person.Role> role(FloorEvent event) {
    return switch (event.what()) {
      case "setter" -> Optional.of(Person.Role.SETTER);
      case "operator" -> Optional.of(Person.Role.OPERATOR);
      default -> person(event).map(Person::role);
    };
  }

  /** The shift as it is on the days that nobody is away, and in parts on the others. */
  private List<Shift> parted(Shift shift, List<OnDay> touched) {
    List<Shift> parts = new ArrayList<>();
    Set<DayOfWeek> rest = EnumSet.noneOf(DayOfWeek.class);
    rest.addAll(shift.days());
    for (OnDay day : touched) {
      if (rest.remove(day.day().getDayOfWeek())) {
        parts.addAll(parts(day));
      }
    }
    if (!rest.isEmpty()) {
      parts.add(0, with(shift, rest, shift.from(), shift.to(), List.of()));
    }
    return parts;
  }

  private List<Shift> parts(OnDay day) {
    TreeSet<Integer> cuts = new TreeSet<>(List.of(day.span().from(), day.span().to()));
    List<FloorEvent> gone =
        away.stream().filter(e -> missing(day.shift(), e) && overlaps(day, e)).toList();
    for (FloorEvent event : gone) {
      cuts.add(Math.max(day.span().from(), Math.max(nowMin, event.fromMin())));
      cuts.add(Math.min(day.span().to(), event.toMin()));
    }
    if (startsOnClosedDay(cuts, day)) {
      cuts = new TreeSet<>(List.of(day.span().from(), day.span().to()));
    }
    List<Shift> parts = new ArrayList<>();
    int from = cuts.first();
    for (int to : cuts.tailSet(from, false)) {
      int start = from;
      int end = to;
      List<FloorEvent> now =
          gone.stream()
              .filter(e -> e.fromMin() < end && start < e.toMin() && end > nowMin)
              .toList();
      parts.add(
          with(day.shift(), EnumSet.of(date(from).getDayOfWeek()), time(from), time(to), now));
      from = to;
    }
    return parts;
  }

  /** A part after midnight would begin on a day on which no shift begins. */
  private boolean startsOnClosedDay(Set<Integer> cuts, OnDay day) {
    List<LocalDate> closed = plan.problem().plant().hours().closed();
    return cuts.stream()
        .filter(c -> c < day.span().to())
        .anyMatch(c -> closed.contains(date(c)) && !date(c).equals(day.day()));
  }

  private Shift with(
      Shift shift, Set<DayOfWeek> days, LocalTime from, LocalTime to, List<FloorEvent> gone) {
    int setters = shift.setters();
    int operators = shift.operatorThousandths();
    for (FloorEvent event : gone) {
      if (role(event).filter(r -> r == Person.Role.SETTER).isPresent()) {
        setters = Math.max(0, setters - event.count());
      } else {
        operators = Math.max(0, operators - PERSON * event.count());
      }
    }
    List<Break> breaks = breaks(shift, from, to);
    return new Shift(shift.name(), days, from, to, breaks, setters, operators, shift.inspectors());
  }

  /** What of the breaks of a shift lies in a part of it. */
  private static List<Break> breaks(Shift shift, LocalTime from, LocalTime to) {
    int base = minutes(shift.from());
    int begins = after(from, base, false);
    int ends = after(to, base, true);
    List<Break> breaks = new ArrayList<>();
    for (Break pause : shift.breaks()) {
      int start = Math.max(begins, after(pause.from(), base, false));
      int end = Math.min(ends, after(pause.to(), base, true));
      if (start < end) {
        breaks.add(new Break(shift.from().plusMinutes(start), shift.from().plusMinutes(end)));
      }
    }
    return breaks;
  }

  /** Minutes from the start of the shift to a time of day; a whole day for its start as an end. */
  private static int after(LocalTime time, int base, boolean end) {
    int minutes = Math.floorMod(minutes(time) - base, 1440);
    return minutes == 0 && end ? 1440 : minutes;
  }

  private static int minutes(LocalTime time) {
    return time.getHour() * 60 + time.getMinute();
  }

  private LocalDate date(int minute) {
    return Instant.ofEpochSecond(minute * 60L).atZone(zone).toLocalDate();
  }

  private LocalTime time(int minute) {
    return Instant.ofEpochSecond(minute * 60L).atZone(zone).toLocalTime();
  }
}
