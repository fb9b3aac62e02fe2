package pressweek.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Run;
import pressweek.data.problem.Lot;
import pressweek.data.problem.Problem;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;

/** Stock of all components, on plants that are short of some of them. */
class StockTest {
  /** What happened on the drawn plants, so that a test which checks nothing is told. */
  private int waits;

  private int fromExpiring;
  private int leftOut;
  private int severalLots;

  @Test
  void auditAgreesOnDrawnPlants() {
    assertThat(findings(1, 13, 30)).isEmpty();
    assertThat(waits).isPositive();
    assertThat(fromExpiring).isPositive();
    assertThat(leftOut).isPositive();
    assertThat(severalLots).isPositive();
  }

  @Test
  @Tag("full")
  void auditAgreesOnHundredsOfDrawnPlants() {
    assertThat(findings(500, 700, 60)).isEmpty();
  }

  private List<String> findings(int from, int to, int steps) {
    List<String> found = new ArrayList<>();
    for (long seed = from; seed < to; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int jobs = 4 + random.nextInt(36);
      int presses = 1 + random.nextInt(6);
      Problem problem =
          RandomStock.add(
              RandomPlant.of(seed, jobs, presses).load(0.3 + random.nextDouble()).build(), seed);
      Plan plan = Plans.of(problem, steps, seed);
      for (Finding finding : Audit.check(problem, plan)) {
        found.add("seed " + seed + ": " + finding);
      }
      count(problem, plan);
    }
    return found;
  }

  private void count(Problem problem, Plan plan) {
    int end = problem.plant().hours().endMin();
    Set<String> expiring = new HashSet<>();
    for (Lot lot : problem.materials().stock().lots()) {
      if (lot.expiresMin().orElse(end) < end) {
        expiring.add(lot.what() + "/" + lot.id());
      }
    }
    Map<String, Integer> lots = new HashMap<>();
    for (Pull pull : plan.pulls()) {
      fromExpiring += expiring.contains(pull.insert() + "/" + pull.lot()) ? 1 : 0;
      severalLots += lots.merge(pull.run() + " " + pull.insert(), 1, Integer::sum) > 1 ? 1 : 0;
    }
    for (Run run : plan.runs()) {
      waits += run.waits().stream().anyMatch(wait -> wait.cause() == Cause.INSERTS) ? 1 : 0;
    }
    leftOut += plan.unplaced().stream().anyMatch(line -> line.lacks().isPresent()) ? 1 : 0;
  }
}
