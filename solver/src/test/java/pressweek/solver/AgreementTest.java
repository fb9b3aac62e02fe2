package pressweek.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Problem;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;

/**
 * The audit, which shares no code with the planner, works out every minute and every thousandth of
 * a cent of drawn plants with arrangements again and finds the same.
 */
final class AgreementTest {
  @Test
  void auditAgreesOnDrawnPlantsWithArrangements() {
    assertThat(findings(1, 31, 20)).isEmpty();
  }

  @Test
  @Tag("full")
  void auditAgreesOnAThousandDrawnPlantsWithArrangements() {
    assertThat(findings(2_001, 3_001, 30)).isEmpty();
  }

  private static List<String> findings(int from, int to, int steps) {
    List<String> found = new ArrayList<>();
    for (long seed = from; seed < to; seed++) {
      Problem problem = DrawnWeeks.arranged(seed);
      for (Finding finding : Audit.check(problem, Plans.of(problem, steps, seed))) {
        found.add("seed " + seed + ": " + finding);
      }
    }
    return found;
  }
}
