package pressweek.solver.repair;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import pressweek.data.plan.PlantWide.Opened;
import pressweek.data.problem.Break;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Shift;

/**
 * An overtime shift that the earlier plan opened and that is under way goes on: what is left of it
 * is a shift of its own, which nobody has to open again. In a horizon of more than seven days it
 * comes again on the same weekday of a later week, as all shifts do.
 */
final class OpenedLeft {
  private final Hours hours;
  private final List<Shift> shifts;
  private final List<Calendar> calendars;

  private OpenedLeft(Hours hours) {
    this.hours = hours;
    shifts = new ArrayList<>(hours.shifts());
    calendars = new ArrayList<>(hours.calendars());
  }

  /**
   * Hours with what is left of opened shifts.
   *
   * @param hours hours from the present on
   * @param opened overtime shifts of the earlier plan
   */
  static Hours of(Hours hours, List<Opened> opened) {
    OpenedLeft left = new OpenedLeft(hours);
    for (Opened shift : opened) {
      boolean underWay = shift.fromMin() < hours.startMin() && shift.toMin() > hours.startMin();
      if (underWay) {
        hours.shifts().stream()
            .filter(s -> s.name().equals(shift.shift()))
            .findFirst()
            .ifPresent(s -> left.goesOn(s, shift.toMin()));
      }
    }
    return new Hours(
        hours.zone(),
        hours.startMin(),
        hours.endMin(),
        left.shifts,
        left.calendars,
        hours.closed());
  }

  private void goesOn(Shift shift, int toMin) {
    LocalDateTime from = local(hours.startMin());
    LocalDateTime to = local(toMin);
    String name = shift.name() + " goes on";
    List<Break> breaks = new ArrayList<>();
    for (Break pause : shift.breaks()) {
      LocalDateTime begins = from.toLocalDate().atTime(pause.from());
      LocalDateTime ends = from.toLocalDate().atTime(pause.to());
      if (begins.isBefore(to) && ends.isAfter(from) && ends.isAfter(begins)) {
        breaks.add(
            new Break(
                begins.isBefore(from) ? from.toLocalTime() : pause.from(),
                ends.isAfter(to) ? to.toLocalTime() : pause.to()));
      }
    }
    shifts.add(
        new Shift(
            name,
            EnumSet.of(from.getDayOfWeek()),
            from.toLocalTime(),
            to.toLocalTime(),
            breaks,
            shift.setters(),
            shift.operatorThousandths(),
            shift.inspectors()));
    calendars.replaceAll(c -> c.shifts().contains(shift.name()) ? with(c, name) : c);
  }

  private static Calendar with(Calendar calendar, String name) {
    List<String> names = new ArrayList<>(calendar.shifts());
    names.add(name);
    return new Calendar(calendar.id(), names);
  }

  private LocalDateTime local(int minute) {
    ZoneId zone = hours.zone();
    return Instant.ofEpochSecond(minute * 60L).atZone(zone).toLocalDateTime();
  }
}
