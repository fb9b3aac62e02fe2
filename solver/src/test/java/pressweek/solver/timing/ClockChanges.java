package pressweek.solver.timing;

import java.time.LocalDateTime;
import java.time.ZoneId;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;

/** Weeks in Berlin in which the clocks change. */
final class ClockChanges {
  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

  private ClockChanges() {}

  /** Minutes since 1970 UTC of a local time there, {@code 2026-10-25T06:00}. */
  static int at(String local) {
    long second = LocalDateTime.parse(local).atZone(BERLIN).toEpochSecond();
    return Math.toIntExact(second / 60);
  }

  /** The problem in Berlin, for seven days of 24 hours from a time. */
  static Problem from(Problem problem, int startMin) {
    Plant p = problem.plant();
    Hours h = p.hours();
    Plant plant =
        new Plant(
            p.name(),
            new Hours(
                BERLIN, startMin, startMin + 7 * 1_440, h.shifts(), h.calendars(), h.closed()),
            p.crew(),
            p.shipping(),
            p.rates(),
            p.changes(),
            p.moveToleranceMin(),
            p.barrelDefaultG());
    return new Problem(
        plant,
        problem.floor(),
        problem.materials(),
        problem.jobs(),
        problem.unplaced(),
        problem.notChecked(),
        problem.kitting());
  }

  /** The press on another calendar. */
  static Press on(Press press, String calendar) {
    return new Press(
        press.id(),
        press.cell(),
        press.build(),
        press.size(),
        calendar,
        press.food(),
        press.ratePerHour());
  }

  /** The mold with or without hand loading. */
  static Mold handLoaded(Mold m, boolean handLoad) {
    return new Mold(
        m.id(), m.use(), m.cavities(), m.body(), m.runsOn(), m.change(), m.cycleS(), handLoad);
  }
}
