package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.ClockWeek.utc;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;

/** A weekend on which clocks change, with a shift without people on P1 and overtime on P2. */
class ClockWeekTest {
  @Test
  void bothWeekendsAddUp() {
    assertThat(TinyWeek.told(ClockWeek.autumn())).isEmpty();
    assertThat(TinyWeek.told(ClockWeek.spring())).isEmpty();
  }

  @Test
  void aMinuteTooLongAtNightIsFound() {
    assertThat(TinyWeek.told(ends(ClockWeek.autumn(), "R1", "2026-10-25T03:01:00Z")))
        .containsExactly(
            "RUN_TIME run R1 (A/1) on P1 from Sat 2026-10-24 20:00 to Sun 2026-10-25 04:01 has 451"
                + " working min; expected 450 for 1000 shots");
    assertThat(TinyWeek.told(ends(ClockWeek.spring(), "R1", "2027-03-28T02:31:00Z")))
        .containsExactly(
            "RUN_TIME run R1 (A/1) on P1 from Sat 2027-03-27 20:00 to Sun 2027-03-28 04:31 has 451"
                + " working min; expected 450 for 1000 shots");
  }

  /** B/1 must not take its hour as one before the clocks change, nor forget the pause. */
  @Test
  void aMinuteTooShortInOvertimeIsFound() {
    assertThat(TinyWeek.told(ends(ClockWeek.autumn(), "R2", "2026-10-25T01:14:00Z")))
        .containsExactly(
            "RUN_TIME run R2 (B/1) on P2 from Sat 2026-10-24 20:00 to Sun 2026-10-25 02:14+01:00"
                + " has 404 working min; expected 405 for 1000 shots");
    assertThat(TinyWeek.told(ends(ClockWeek.spring(), "R2", "2027-03-28T01:59:00Z")))
        .containsExactly(
            "RUN_TIME run R2 (B/1) on P2 from Sat 2027-03-27 20:00 to Sun 2027-03-28 03:59 has 404"
                + " working min; expected 405 for 1000 shots");
  }

  private static Plan ends(Plan plan, String run, String end) {
    Plan edited = Edited.set(plan, "runs[" + run + "].endMin", utc(end));
    return Edited.set(edited, "runs[" + run + "].readyMin", utc(end));
  }

  /** By the clock on the wall it is 6 h long, but on neither of these nights. */
  @Test
  void overtimeOfSixHoursIsOpenedOnNeitherNight() {
    PlantWide.Opened autumn =
        new PlantWide.Opened("extra", utc("2026-10-24T20:00:00Z"), utc("2026-10-25T02:00:00Z"));
    assertThat(TinyWeek.told(opens(ClockWeek.autumn(), autumn)))
        .contains(
            "FIGURES the plan opens shift extra from Sat 2026-10-24 22:00 to Sun 2026-10-25 03:00,"
                + " which is not when it may be worked",
            "PRESS_HOURS run R2 (B/1) on P2 ends Sun 2026-10-25 02:15+01:00, when the press does not"
                + " work");
    PlantWide.Opened spring =
        new PlantWide.Opened("extra", utc("2027-03-27T21:00:00Z"), utc("2027-03-28T03:00:00Z"));
    assertThat(TinyWeek.told(opens(ClockWeek.spring(), spring)))
        .contains(
            "FIGURES the plan opens shift extra from Sat 2027-03-27 22:00 to Sun 2027-03-28 05:00,"
                + " which is not when it may be worked");
  }

  private static Plan opens(Plan plan, PlantWide.Opened opened) {
    PlantWide whole = Edited.set(plan.head().plantWide(), "opened", List.of(opened));
    return TinyWeek.with(plan, whole);
  }

  /**
   * The setter of the overtime is asked for the change of C/1 in the repeated hour and after it.
   */
  @Test
  void withoutASetterInTheOvertimeNoChangeIsMade() {
    Plan plan = Edited.set(ClockWeek.autumn(), "problem.plant.hours.shifts[extra].setters", 0);
    assertThat(TinyWeek.told(plan))
        .containsExactly(
            "SETTERS the change before run R3 (C/1) on P2 starts Sun 2026-10-25 02:15+01:00; at"
                + " 02:15+01:00 it is one of 1 that take a setter, there are 0",
            "SETTERS the change before run R3 (C/1) on P2 from Sun 2026-10-25 02:15+01:00 to 03:25"
                + " is not within shifts that have a setter");
  }
}
