package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;

import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;

/**
 * R9 is ready Thu 09:34 and G/1 is not placed; both were due three days before the plan starts on
 * Mon 06:00. Only what comes after the start is charged: for R9 75 h 34, which are 4534 min, and
 * the cut-offs of Monday to Wednesday; for G/1 five days and the cut-offs of Monday to Friday.
 */
class LateBeforeTheStartTest {
  private static Plan plan() {
    int due = at("Mon 06:00") - 3 * 1440;
    Plan plan = Edited.set(WeekPlan.plan(), "problem.jobs[F/1].deadline.dueMin", due);
    plan = Edited.set(plan, "problem.jobs[G/1].deadline.dueMin", due);
    // The minutes late of the figures count from the due time: 3 days and Mon 06:00 to Thu 09:34,
    // 4534 min.
    plan = Edited.set(plan, "figures.lateMin", 3L * 1440 + 4534);
    // 1.5 x (3 x 100.00 + 60.00 x 4534 / 1440), 60.00 x 4534 / 1440 = 188.91666, rounded down.
    long late = 73_337_499L;
    // 400.00 + 5 x 100.00 + 60.00 x 5.
    long unplaced = 120_000_000L;
    plan = Edited.set(plan, "runs[R9].charges[0].amount", late);
    plan = Edited.set(plan, "unplacedCharges[0].amount", unplaced);
    plan = Edited.edit(plan, "figures.costByRule", Edited.put(Rule.LATE, late));
    return Edited.edit(plan, "figures.costByRule", Edited.put(Rule.UNPLACED, unplaced));
  }

  @Test
  void whatWasLateBeforeTheStartIsNotCharged() {
    assertThat(TinyWeek.messages(plan())).isEmpty();
  }

  @Test
  void theMinutesLateOfTheFiguresCountFromTheDueTime() {
    assertThat(TinyWeek.messages(Edited.set(plan(), "figures.lateMin", 4534L)))
        .containsExactly("figures say 4534 minutes late; the plan comes to 8854");
  }
}
