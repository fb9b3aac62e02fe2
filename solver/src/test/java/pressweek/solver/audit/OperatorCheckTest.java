package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Problem;

/**
 * P3 works by day: its run of 120 min stands from 14:00 on Monday to 06:00 on Tuesday. P1 runs in
 * between.
 */
class OperatorCheckTest {
  private static Plan plan(int operatorsLate, int operatorsEarly) {
    Problem problem =
        TinyWeek.problem(
            job("A/1", "PP BK", option("P1 M1 T8", pace(120, 5, 1000), making(0))),
            job("B/1", "PP WH", option("P3 M3", pace(120, 5, 1000), making(0))));
    problem = Edited.set(problem, "plant.crew.operatorsChecked", true);
    problem = Edited.set(problem, "plant.hours.shifts[late].operatorThousandths", operatorsLate);
    problem = Edited.set(problem, "plant.hours.shifts[early].operatorThousandths", operatorsEarly);
    Run late =
        WeekPlan.run(
            "R1 A/1 P1 M1 1",
            WeekPlan.none("Mon 13:59", WeekPlan.setup("M1 T8 PP BK")),
            "Mon 13:59",
            "Mon 15:59");
    Run paused =
        WeekPlan.run(
            "R2 B/1 P3 M3 1",
            WeekPlan.none("Mon 13:00", WeekPlan.setup("M3 - PP WH")),
            "Mon 13:00",
            "Tue 07:00");
    return TinyWeek.plan(problem, List.of(late, paused));
  }

  @Test
  void aRunThatPausesTakesNobody() {
    assertThat(TinyWeek.messages(plan(1000, 2000))).isEmpty();
  }

  @Test
  void oneMinuteTogetherIsOneTooMany() {
    assertThat(TinyWeek.messages(plan(1000, 1999)))
        .containsExactly(
            "run R1 (A/1) on P1 starts Mon 2026-11-30 13:59; at 13:59 runs need 2.000 operators,"
                + " there are 1.999");
  }
}
