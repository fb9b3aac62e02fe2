package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Change;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Break;
import pressweek.data.problem.Calendar;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Shipping;

/**
 * The two nights of 2026 on which clocks change in Berlin; a night shift from 22:00 to 06:00 with
 * two breaks, a truck at 02:30.
 */
class ClockChangeTest {
  private static final Set<DayOfWeek> DAILY = EnumSet.allOf(DayOfWeek.class);
  private static final Setup SETUP = WeekPlan.setup("M1 T8 PP BK");

  private static int utc(String instant) {
    return (int) (Instant.parse(instant).getEpochSecond() / 60);
  }

  private static Problem problem(String start, String end, String due, int runMin) {
    List<Break> breaks =
        List.of(
            new Break(LocalTime.of(2, 0), LocalTime.of(2, 30)),
            new Break(LocalTime.of(2, 45), LocalTime.of(3, 15)));
    Shift night =
        new Shift(
            "night",
            DAILY,
            LocalTime.of(22, 0),
            LocalTime.of(6, 0),
            breaks,
            0,
            0,
            OptionalInt.empty());
    Hours hours =
        new Hours(
            ZoneId.of("Europe/Berlin"),
            utc(start),
            utc(end),
            List.of(night),
            List.of(new Calendar("two", List.of("night"))),
            List.of());
    Problem problem =
        TinyWeek.problem(job("A/1", "PP BK", option("P1 M1 T8", pace(runMin, 0, 0), making(0))));
    problem = Edited.set(problem, "plant.hours", hours);
    problem = Edited.set(problem, "plant.shipping", new Shipping(DAILY, LocalTime.of(2, 30)));
    problem = Edited.set(problem, "plant.rates.lateStep", 10_000_000L);
    problem = Edited.set(problem, "plant.rates.lateDay", 6_000_000L);
    return Edited.set(problem, "jobs[0].deadline", new Deadline(utc(start), utc(due), 0, 100));
  }

  private static Plan plan(Problem problem, String end, long lateMin, long charge) {
    int start = problem.plant().hours().startMin();
    int endMin = utc(end);
    Change none = new Change(SETUP, SETUP, List.of(), start, start, 0, 0);
    Run run =
        new Run(
            "R1",
            "A/1",
            "P1",
            "M1",
            1,
            none,
            start,
            endMin,
            endMin,
            List.of(),
            List.of(new Charge(Rule.LATE, charge, "by hand")));
    Plan plan = TinyWeek.plan(problem, List.of(run));
    plan = Edited.set(plan, "figures.lateLines", 1);
    plan = Edited.set(plan, "figures.lateMin", lateMin);
    return Edited.set(plan, "figures.costByRule", Map.of(Rule.LATE, charge));
  }

  /**
   * 2026-03-29: from 02:00+01:00 it is 03:00+02:00 (01:00Z). The night lasts 7 h. The first break
   * is all skipped, the second is from 03:00 to 03:15. 420 - 15 = 405 min; 45 more from Sunday
   * 22:00+02:00 (20:00Z) end 20:45Z. The truck of 02:30 leaves at 01:00Z, before the line is due at
   * 01:15Z. 19 h 30 late: 60.00 x 1170 / 1440 = 48.75.
   */
  @Test
  void theShortNight() {
    Problem problem =
        problem("2026-03-28T21:00:00Z", "2026-04-04T20:00:00Z", "2026-03-29T01:15:00Z", 450);
    assertThat(TinyWeek.messages(plan(problem, "2026-03-29T20:45:00Z", 1170, 4_875_000))).isEmpty();
    assertThat(TinyWeek.messages(plan(problem, "2026-03-29T20:46:00Z", 1171, 4_879_166)))
        .containsExactly(
            "run R1 (A/1) on P1 from Sat 2026-03-28 22:00 to Sun 2026-03-29 22:46 has 451 working"
                + " min; expected 450 for 1000 shots");
  }

  /**
   * 2026-10-25: from 03:00+02:00 it is 02:00+01:00 (01:00Z) again. The night lasts 9 h. The first
   * break is from the first 02:00 (00:00Z), 30 min; the second from the first 02:45 (00:45Z) to
   * 03:15+01:00 (02:15Z), 90 min. 540 - 30 - 90 = 420 min; 10 more from Sunday 22:00+01:00
   * (21:00Z). The truck leaves at the first 02:30 (00:30Z), before the line is due at 00:45Z. 20 h
   * 25 late: 60.00 x 1225 / 1440, rounded down.
   */
  @Test
  void theLongNight() {
    Problem problem =
        problem("2026-10-24T20:00:00Z", "2026-10-31T20:00:00Z", "2026-10-25T00:45:00Z", 430);
    assertThat(TinyWeek.messages(plan(problem, "2026-10-25T21:10:00Z", 1225, 5_104_166))).isEmpty();
    assertThat(TinyWeek.messages(plan(problem, "2026-10-25T21:09:00Z", 1224, 5_100_000)))
        .containsExactly(
            "run R1 (A/1) on P1 from Sat 2026-10-24 22:00 to Sun 2026-10-25 22:09 has 429 working"
                + " min; expected 430 for 1000 shots");
  }

  @Test
  void aRepeatedLocalTimeIsWrittenWithItsOffset() {
    Clock clock = new Clock(ZoneId.of("Europe/Berlin"));
    assertThat(clock.text(utc("2026-10-25T00:30:00Z"))).isEqualTo("Sun 2026-10-25 02:30+02:00");
    assertThat(clock.text(utc("2026-10-25T01:30:00Z"))).isEqualTo("Sun 2026-10-25 02:30+01:00");
    assertThat(clock.text(utc("2026-10-25T02:30:00Z"))).isEqualTo("Sun 2026-10-25 03:30");
  }
}
