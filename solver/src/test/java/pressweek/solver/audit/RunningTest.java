package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;
import static pressweek.solver.audit.Parts.job;
import static pressweek.solver.audit.Parts.making;
import static pressweek.solver.audit.Parts.option;
import static pressweek.solver.audit.Parts.pace;
import static pressweek.solver.audit.Parts.take;

import java.util.List;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Stock;

/** Two jobs are running when the plan starts, on P1 for 120 and on P2 for 90 minutes. */
class RunningTest {
  private static Problem problem() {
    Problem problem =
        TinyWeek.problem(
            job("A/1", "PP BK", option("P1 M1 T8", pace(120, 5, 1000), making(0))),
            job(
                "B/1",
                "ABS RD",
                option("P2 M4", pace(90, 5, 1000), making(0, take("I1", 10, 5, 0)))));
    problem = Edited.set(problem, "floor.states[P1].job", "A/1");
    return Edited.set(problem, "floor.states[P2].job", "B/1");
  }

  private static Plan plan(Problem problem, String start, String end) {
    Run first =
        WeekPlan.run(
            "R1 A/1 P1 M1 1",
            WeekPlan.none("Mon 06:00", WeekPlan.setup("M1 T8 PP BK")),
            "Mon 06:00",
            "Mon 08:00");
    Run second =
        WeekPlan.run(
            "R2 B/1 P2 M4 1", WeekPlan.none(start, WeekPlan.setup("M4 - ABS RD")), start, end);
    int receipt = problem.materials().stock().checked() ? at("Mon 09:00") : 0;
    Pull pull = new Pull("R2", "P2", at(start) - 30, "I1", "", "", receipt, 10);
    return TinyWeek.plan(problem, List.of(first, second), pull);
  }

  @Test
  void bothGoOnAtOnce() {
    assertThat(TinyWeek.messages(plan(problem(), "Mon 06:00", "Mon 07:30"))).isEmpty();
  }

  @Test
  void oneMayNotWaitForNothing() {
    assertThat(TinyWeek.messages(plan(problem(), "Mon 08:00", "Mon 09:30")))
        .containsExactly(
            "run R2 (B/1) on P2 is running already and starts Mon 2026-11-30 08:00; expected 06:00,"
                + " when it can go on");
  }

  @Test
  void itStartsWhenThePressWorks() {
    Downtime down = new Downtime(Downtime.Kind.PRESS, "P2", 0, at("Mon 08:00"), "hose");
    Problem problem = Edited.set(problem(), "floor.downtime", List.of(down));
    assertThat(TinyWeek.messages(plan(problem, "Mon 08:00", "Mon 09:30"))).isEmpty();
  }

  @Test
  void itWaitsForAnOperator() {
    Problem problem = Edited.set(problem(), "plant.crew.operatorsChecked", true);
    problem = Edited.set(problem, "plant.hours.shifts[early].operatorThousandths", 1999);
    assertThat(TinyWeek.messages(plan(problem, "Mon 08:00", "Mon 09:30"))).isEmpty();
    assertThat(TinyWeek.messages(plan(problem, "Mon 08:10", "Mon 09:40")))
        .singleElement()
        .asString()
        .contains("starts Mon 2026-11-30 08:10; expected 08:00");
    assertThat(TinyWeek.messages(plan(problem, "Mon 07:59", "Mon 09:29")))
        .containsExactly(
            "run R2 (B/1) on P2 starts Mon 2026-11-30 07:59; at 07:59 runs need 2.000 operators,"
                + " there are 1.999");
  }

  @Test
  void itIsLeftOutOnlyWhenItCanGoOnAtNoTime() {
    Problem problem = Edited.set(problem(), "plant.crew.operatorsChecked", true);
    problem = Edited.set(problem, "plant.hours.shifts[late].operatorThousandths", 0);
    String told = "line B/1 is running on P2, the plan has no run of it there";
    for (int there : new int[] {1000, 999}) {
      Problem less = Edited.set(problem, "plant.hours.shifts[early].operatorThousandths", there);
      Plan plan = plan(less, "Mon 08:00", "Mon 09:30");
      List<Run> first = plan.runs().stream().filter(run -> run.job().equals("A/1")).toList();
      List<String> messages = TinyWeek.messages(Edited.set(plan, "runs", first));
      if (there == 1000) {
        assertThat(messages).contains(told);
      } else {
        assertThat(messages).isNotEmpty().doesNotContain(told);
      }
    }
  }

  @Test
  void itWaitsForItsMold() {
    Downtime away =
        new Downtime(Downtime.Kind.MOLD, "M4", at("Mon 07:00"), at("Mon 08:00"), "polish");
    Problem problem = Edited.set(problem(), "floor.downtime", List.of(away));
    assertThat(TinyWeek.messages(plan(problem, "Mon 08:00", "Mon 09:30"))).isEmpty();
    assertThat(TinyWeek.messages(plan(problem, "Mon 08:01", "Mon 09:31")))
        .singleElement()
        .asString()
        .contains("expected 08:00, when it can go on");
  }

  @Test
  void itWaitsForItsInserts() {
    Receipt receipt = new Receipt("I1", 10, at("Mon 08:00"), at("Mon 09:00"));
    Problem problem =
        Edited.set(problem(), "materials.stock", new Stock(true, List.of(), List.of(receipt)));
    // Inserts are needed half an hour ahead; from 09:30 it is 30 min to the break and 60 after it.
    assertThat(TinyWeek.messages(plan(problem, "Mon 09:30", "Mon 11:30"))).isEmpty();
    assertThat(TinyWeek.messages(plan(problem, "Mon 09:31", "Mon 11:31")))
        .singleElement()
        .asString()
        .contains("expected 09:30, when it can go on");
  }

  @Test
  void aRunningFoodGradeJobNeedsNoClearanceButGivesNone() {
    Problem problem = Edited.set(problem(), "jobs[B/1].foodGrade", true);
    problem = Edited.set(problem, "floor.states[P2].clearedForFood", false);
    problem = Edited.set(problem, "jobs[B/1].deadline.earliestMin", at("Tue 06:00"));
    Plan plan = plan(problem, "Mon 06:00", "Mon 07:30");
    assertThat(TinyWeek.messages(plan)).isEmpty();
    assertThat(Week.of(problem, plan).walks().get(1).stays().get(0).running()).isTrue();
  }
}
