package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;

import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Opening;
import pressweek.data.problem.Problem;

/**
 * Nobody is there from 22:00 to 06:00, with a pause at 02:00. M1 runs without hand loading, for 420
 * min from Monday 20:00: 120 with people, 240 to the pause, 60 after it.
 */
class UnattendedTest {
  private static Problem problem() {
    Problem problem =
        TinyWeek.problem(job("A/1", "PP BK", option("P1 M1 T8", pace(420, 5, 1000), making(0))));
    problem = Edited.set(problem, "floor.molds[M1].handLoad", false);
    problem = Edited.set(problem, "plant.crew.operatorsChecked", true);
    problem = Arranged.shift(problem, "ghost", "22:00-06:00", "02:00-02:10");
    problem = Edited.set(problem, "plant.hours.shifts[ghost].operatorThousandths", 0);
    return Arranged.set(problem, "opening", new Opening(List.of(), List.of("ghost")));
  }

  private static Plan plan(Problem problem, String start, String end) {
    Run run =
        WeekPlan.run(
            "R1 A/1 P1 M1 1", WeekPlan.none(start, WeekPlan.setup("M1 T8 PP BK")), start, end);
    return TinyWeek.plan(problem, List.of(run));
  }

  @Test
  void aRunWithoutHandLoadingGoesOnAndEndsInIt() {
    assertThat(TinyWeek.told(plan(problem(), "Mon 20:00", "Tue 03:10"))).isEmpty();
    assertThat(TinyWeek.told(plan(problem(), "Mon 20:00", "Tue 03:09")))
        .containsExactly(
            "RUN_TIME run R1 (A/1) on P1 from Mon 2026-11-30 20:00 to Tue 2026-12-01 03:09 has 419"
                + " working min; expected 420 for 1000 shots");
  }

  @Test
  void aHandLoadedRunKnowsNothingOfIt() {
    Problem hand = Edited.set(problem(), "floor.molds[M1].handLoad", true);
    // 120 min on Monday, 240 on Tuesday to the pause at 10:00, 60 after it.
    assertThat(TinyWeek.told(plan(hand, "Mon 20:00", "Tue 11:30"))).isEmpty();
    assertThat(TinyWeek.told(plan(hand, "Mon 20:00", "Tue 03:10")))
        .containsExactly(
            "PRESS_HOURS run R1 (A/1) on P1 ends Tue 2026-12-01 03:10, when the press does not work",
            "RUN_TIME run R1 (A/1) on P1 from Mon 2026-11-30 20:00 to Tue 2026-12-01 03:10 has 120"
                + " working min; expected 420 for 1000 shots");
  }

  /** From 22:00 it is 240 min to the pause; 180 after it. */
  @Test
  void noRunStartsInIt() {
    assertThat(TinyWeek.told(plan(problem(), "Mon 21:59", "Tue 05:09"))).isEmpty();
    assertThat(TinyWeek.told(plan(problem(), "Mon 22:00", "Tue 05:10")))
        .containsExactly(
            "PRESS_HOURS run R1 (A/1) on P1 starts Mon 2026-11-30 22:00, when the press does not"
                + " work");
  }

  @Test
  void itsPressMayBeAwayOrNotWorkIt() {
    Downtime down =
        new Downtime(Downtime.Kind.PRESS, "P1", at("Mon 23:00"), at("Tue 00:00"), "hose");
    Problem away = Edited.set(problem(), "floor.downtime", List.of(down));
    assertThat(TinyWeek.told(plan(away, "Mon 20:00", "Tue 04:10"))).isEmpty();
    Problem day =
        Edited.set(problem(), "plant.hours.calendars[two].shifts", List.of("early", "late"));
    assertThat(TinyWeek.told(plan(day, "Mon 20:00", "Tue 11:30"))).isEmpty();
  }

  /** The early shift pauses from 10:00 to 10:30 beside an unattended one, and the press goes on. */
  @Test
  void aBreakOfPeopleDoesNotStopIt() {
    Problem noon = Edited.set(problem(), "plant.hours.shifts[ghost].from", LocalTime.of(9, 0));
    noon = Edited.set(noon, "plant.hours.shifts[ghost].to", LocalTime.of(11, 0));
    noon = Edited.set(noon, "plant.hours.shifts[ghost].breaks", List.of());
    assertThat(TinyWeek.told(plan(noon, "Mon 06:00", "Mon 13:00"))).isEmpty();
    Problem hand = Edited.set(noon, "floor.molds[M1].handLoad", true);
    assertThat(TinyWeek.told(plan(hand, "Mon 06:00", "Mon 13:30"))).isEmpty();
  }

  /** A change of 30 min from 21:40 on cannot go on in it: 20 min are left, 10 come on Tuesday. */
  @Test
  void noChangeIsMadeInIt() {
    Problem problem =
        Edited.set(
            problem(),
            "jobs",
            List.of(job("A/1", "PP BK", option("P1 M1 T9", pace(60, 0, 1000), making(0)))));
    for (boolean span : new boolean[] {false, true}) {
      Problem may = Edited.set(problem, "plant.crew.changeMaySpanGap", span);
      Run run =
          WeekPlan.run(
              "R1 A/1 P1 M1 1",
              WeekPlan.change(
                  "M1 T8 PP BK > M1 T9 PP BK", "Mon 21:40 - Tue 06:10", 30, 0, ChangeKind.TOOLING),
              "Tue 06:10",
              "Tue 07:10");
      Plan plan = TinyWeek.plan(may, List.of(run));
      if (span) {
        assertThat(TinyWeek.told(plan)).isEmpty();
      } else {
        assertThat(TinyWeek.told(plan))
            .containsExactly(
                "PRESS_HOURS the change before run R1 (A/1) on P1 from Mon 2026-11-30 21:40 to Tue"
                    + " 2026-12-01 06:10 is left half done while the press does not work");
      }
    }
  }

  /** It is running, so it starts with the plan; M1 is away on Monday from 23:00 on. */
  @Test
  void aRunningJobReckonsWithIt() {
    Problem problem = Edited.set(problem(), "floor.states[P1].job", "A/1");
    problem = Edited.set(problem, "plant.hours.startMin", at("Mon 20:00"));
    problem = Edited.set(problem, "jobs[A/1].deadline.earliestMin", at("Mon 20:00"));
    assertThat(TinyWeek.told(plan(problem, "Mon 20:00", "Tue 03:10"))).isEmpty();
    Downtime away =
        new Downtime(Downtime.Kind.MOLD, "M1", at("Mon 23:00"), at("Mon 23:30"), "polish");
    problem = Edited.set(problem, "floor.downtime", List.of(away));
    // From 06:00 it is 240 min to the pause and 180 after it, all with people.
    assertThat(TinyWeek.told(plan(problem, "Tue 06:00", "Tue 13:30"))).isEmpty();
    assertThat(TinyWeek.told(plan(problem, "Tue 06:01", "Tue 13:31")))
        .containsExactly(
            "RUNNING run R1 (A/1) on P1 is running already and starts Tue 2026-12-01 06:01; expected"
                + " 06:00, when it can go on");
  }
}
