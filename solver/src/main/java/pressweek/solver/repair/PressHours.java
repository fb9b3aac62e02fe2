package pressweek.solver.repair;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.problem.Break;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Shift;
import pressweek.solver.repair.WorkSpans.Stretch;

/**
 * When presses work by a plan: the shifts of their calendars, overtime where the plan opens it,
 * less breaks and downtime, as {@code docs/rules.md} says under "Working time".
 */
final class PressHours {
  /** Days after the horizon that are looked at, for runs that end after it. */
  private static final int DAYS_AFTER = 56;

  private final Problem problem;
  private final PlantWide whole;
  private final ZoneId zone;

  PressHours(Plan plan) {
    problem = plan.problem();
    whole = plan.head().plantWide();
    zone = problem.plant().hours().zone();
  }

  /** A shift on one day, its start and end, and its breaks. */
  record OnDay(Shift shift, LocalDate day, Stretch span, List<Stretch> breaks) {
    OnDay {
      breaks = List.copyOf(breaks);
    }
  }

  /**
   * The working time of a press.
   *
   * @param press press
   * @param unattended true when shifts without people count as well
   */
  WorkSpans of(Press press, boolean unattended) {
    Opening opening = problem.arranged().opening();
    List<String> names = shiftNames(press.calendar());
    List<Stretch> work = new ArrayList<>();
    List<Stretch> breaks = new ArrayList<>();
    for (OnDay day : days()) {
      boolean alone = opening.unattended().contains(day.shift().name());
      boolean worked = names.contains(day.shift().name()) && (unattended || !alone);
      if (worked && opened(day, opening)) {
        work.add(day.span());
        breaks.addAll(day.breaks());
      }
    }
    List<Stretch> away = new ArrayList<>(breaks);
    for (Downtime down : problem.floor().downtime()) {
      if (down.kind() == Downtime.Kind.PRESS && down.id().equals(press.id())) {
        away.add(new Stretch(down.fromMin(), down.toMin()));
      }
    }
    return WorkSpans.union(work).without(away);
  }

  private boolean opened(OnDay day, Opening opening) {
    String name = day.shift().name();
    boolean overtime = opening.overtime().stream().anyMatch(o -> o.shift().equals(name));
    return !overtime
        || whole.opened().stream()
            .anyMatch(o -> o.shift().equals(name) && o.fromMin() == day.span().from());
  }

  private List<String> shiftNames(String calendar) {
    Hours hours = problem.plant().hours();
    return hours.calendars().stream()
        .filter(c -> c.id().equals(calendar))
        .findFirst()
        .map(Calendar::shifts)
        .orElseGet(() -> hours.shifts().stream().map(Shift::name).toList());
  }

  /** Every shift on every day that the plan could touch. */
  List<OnDay> days() {
    Hours hours = problem.plant().hours();
    LocalDate last = day(hours.endMin()).plusDays(DAYS_AFTER);
    List<OnDay> days = new ArrayList<>();
    for (LocalDate d = day(hours.startMin()).minusDays(2); !d.isAfter(last); d = d.plusDays(1)) {
      for (Shift shift : hours.shifts()) {
        if (shift.days().contains(d.getDayOfWeek()) && !hours.closed().contains(d)) {
          days.add(on(shift, d));
        }
      }
    }
    return days;
  }

  private LocalDate day(int minute) {
    return Instant.ofEpochSecond(minute * 60L).atZone(zone).toLocalDate();
  }

  private OnDay on(Shift shift, LocalDate day) {
    Stretch span = stretch(day, shift.from(), shift.to());
    List<Stretch> breaks = new ArrayList<>();
    for (Break pause : shift.breaks()) {
      LocalDate begins = pause.from().isBefore(shift.from()) ? day.plusDays(1) : day;
      breaks.add(stretch(begins, pause.from(), pause.to()));
    }
    return new OnDay(shift, day, span, breaks);
  }

  private Stretch stretch(LocalDate day, LocalTime from, LocalTime to) {
    LocalDate ends = to.isAfter(from) ? day : day.plusDays(1);
    return new Stretch(minute(day.atTime(from)), minute(ends.atTime(to)));
  }

  private int minute(LocalDateTime time) {
    ZoneOffsetTransition transition = zone.getRules().getTransition(time);
    boolean skipped = transition != null && transition.isGap();
    Instant instant = skipped ? transition.getInstant() : time.atZone(zone).toInstant();
    return Math.toIntExact(Math.floorDiv(instant.getEpochSecond(), 60L));
  }
}
