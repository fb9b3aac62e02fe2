package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;
import pressweek.data.problem.Problem;

/** M1, M2 and M4 need an oil heater, M3 needs none. M1 runs on P1 from 06:00 to 08:00. */
class DeviceTest {
  private static Problem problem(int heaters) {
    Problem problem =
        TinyWeek.problem(
            job("A/1", "PP BK", option("P1 M1 T8", pace(120, 0, 0), making(0))),
            job(
                "B/1",
                "ABS RD",
                option("P2 M2", pace(60, 0, 0), making(0)),
                option("P2 M3", pace(60, 0, 0), making(0)),
                option("P2 M4", pace(60, 0, 0), making(0))));
    problem = Edited.set(problem, "floor.states[P3].setup.mold", "");
    problem = Arranged.set(problem, "things", List.of(new CountedThing("oil heater", heaters)));
    return Arranged.set(
        problem,
        "devices",
        List.of(
            new DeviceNeed("M1", "oil heater"),
            new DeviceNeed("M2", "oil heater"),
            new DeviceNeed("M2", "gripper"),
            new DeviceNeed("M4", "oil heater")));
  }

  private static final Run FIRST =
      WeekPlan.run(
          "R1 A/1 P1 M1 1",
          WeekPlan.none("Mon 06:00", WeekPlan.setup("M1 T8 PP BK")),
          "Mon 06:00",
          "Mon 08:00");

  private static Plan plan(int heaters, String mold, String change, String start, String end) {
    Run second =
        WeekPlan.run(
            "R2 B/1 P2 " + mold + " 1",
            WeekPlan.change(
                "M4 - ABS RD > " + mold + " - ABS RD",
                change + " - " + start,
                70,
                0,
                ChangeKind.MOLD),
            start,
            end);
    return TinyWeek.plan(problem(heaters), List.of(FIRST, second));
  }

  @Test
  void oneIsFreeWhenTheRunEnds() {
    assertThat(TinyWeek.told(plan(1, "M2", "Mon 08:00", "Mon 09:10", "Mon 10:40"))).isEmpty();
  }

  @Test
  void itIsInUseFromTheStartOfTheChange() {
    assertThat(TinyWeek.told(plan(1, "M2", "Mon 07:59", "Mon 09:09", "Mon 10:39")))
        .containsExactly(
            "COUNTED run R2 (B/1) on P2 begins Mon 2026-11-30 07:59; at 07:59 it is one of 2 that"
                + " use device oil heater, there are 1");
    assertThat(TinyWeek.told(plan(2, "M2", "Mon 07:59", "Mon 09:09", "Mon 10:39"))).isEmpty();
  }

  @Test
  void aMoldThatNeedsNoneIsNotAsked() {
    assertThat(TinyWeek.told(plan(1, "M3", "Mon 07:00", "Mon 08:10", "Mon 09:10"))).isEmpty();
  }

  /** M1 and M4 are running with one heater: somebody must have brought another. */
  @Test
  void whatIsRunningAlreadyIsNotAskedButCounts() {
    Problem running = Edited.set(problem(1), "floor.states[P1].job", "A/1");
    running = Edited.set(running, "floor.states[P2].job", "B/1");
    Run beside =
        WeekPlan.run(
            "R2 B/1 P2 M4 1",
            WeekPlan.none("Mon 06:00", WeekPlan.setup("M4 - ABS RD")),
            "Mon 06:00",
            "Mon 07:00");
    Plan both = TinyWeek.plan(running, List.of(FIRST, beside));
    assertThat(TinyWeek.told(both)).isEmpty();
    assertThat(TinyWeek.told(Edited.set(both, "problem.floor.states[P2].job", "")))
        .containsExactly(
            "COUNTED run R2 (B/1) on P2 begins Mon 2026-11-30 06:00; at 06:00 it is one of 2 that"
                + " use device oil heater, there are 1");
  }

  @Test
  void aDeviceThatIsNotCountedIsAlwaysThere() {
    Plan plan = plan(1, "M2", "Mon 07:00", "Mon 08:10", "Mon 09:10");
    Problem uncounted = Arranged.set(plan.problem(), "things", List.of());
    assertThat(TinyWeek.told(Edited.set(plan, "problem", uncounted))).isEmpty();
  }
}
