package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.solver.audit.Parts.at;

import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;

/**
 * The change before R9 begun on Tuesday 13:40: 20 min until P3 closes, 30 min on Thursday from
 * 06:00.
 */
class SpanGapTest {
  private static Plan plan(boolean changeMaySpanGap) {
    Plan plan = Edited.set(WeekPlan.plan(), "runs[R9].change.startMin", at("Tue 13:40"));
    plan = Edited.set(plan, "runs[R9].change.endMin", at("Thu 06:30"));
    plan = Edited.set(plan, "runs[R9].startMin", at("Thu 06:30"));
    plan = Edited.set(plan, "runs[R9].endMin", at("Thu 08:14"));
    plan = Edited.set(plan, "runs[R9].readyMin", at("Thu 09:14"));
    plan = Edited.set(plan, "runs[R9].waits[0].toMin", at("Tue 13:40"));
    plan = Edited.set(plan, "pulls[8].needByMin", at("Thu 06:00"));
    plan = Edited.set(plan, "problem.floor.downtime[1].toMin", at("Thu 06:30"));
    // 20 min earlier: 2534 min late, 60.00 x 2534 / 1440 = 105.58333; 1.5 x 305.58333 = 458.37499.
    plan = Edited.set(plan, "runs[R9].charges[0].amount", 45_837_499L);
    plan = Edited.set(plan, "figures.lateMin", 2534L);
    plan = Edited.edit(plan, "figures.costByRule", Edited.put(Rule.LATE, 45_837_499L));
    return Edited.set(plan, "problem.plant.crew.changeMaySpanGap", changeMaySpanGap);
  }

  @Test
  void aChangeMayBeLeftHalfDoneWhereThePlantSaysSo() {
    assertThat(TinyWeek.messages(plan(true))).isEmpty();
  }

  @Test
  void otherwiseItMayNot() {
    assertThat(TinyWeek.messages(plan(false)))
        .containsExactly(
            "the change before run R9 (F/1) on P3 from Tue 2026-12-01 13:40 to Thu 2026-12-03 06:30"
                + " is left half done while the press does not work",
            "the change before run R9 (F/1) on P3 from Tue 2026-12-01 13:40 to Thu 2026-12-03 06:30"
                + " is not within shifts that have a setter");
  }
}
