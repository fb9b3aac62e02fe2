package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;

class GoodPlanTest {
  @Test
  void aGoodPlanHasNoFindings() {
    Plan plan = WeekPlan.plan();
    assertThat(Audit.check(WeekProblem.problem(), plan)).isEmpty();
  }
}
