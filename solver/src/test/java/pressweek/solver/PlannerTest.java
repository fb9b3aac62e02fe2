package pressweek.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.data.problem.JobBuilder.job;
import static pressweek.data.problem.SmallPlant.START;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;

final class PlannerTest {
  @Test
  void auditAgreesOnDrawnPlants() {
    assertThat(findings(1, 31, 30)).isEmpty();
  }

  @Test
  @Tag("full")
  void auditAgreesOnHundredsOfDrawnPlants() {
    assertThat(findings(1_000, 1_300, 60)).isEmpty();
  }

  private static List<String> findings(int from, int to, int steps) {
    List<String> found = new ArrayList<>();
    for (long seed = from; seed < to; seed++) {
      Problem problem = DrawnWeeks.plain(seed);
      for (Finding finding : Audit.check(problem, Plans.of(problem, steps, seed))) {
        found.add("seed " + seed + ": " + finding);
      }
    }
    return found;
  }

  @Test
  void sameSeedAndStepsGiveTheSamePlan() {
    Problem problem = RandomPlant.of(7, 30, 5).build();
    assertThat(Plans.of(problem, 200, 3)).isEqualTo(Plans.of(problem, 200, 3));
  }

  @Test
  void searchIsNeverWorseThanTheSimpleWays() {
    for (long seed = 1; seed <= 10; seed++) {
      Plan plan = Plans.of(RandomPlant.of(seed, 25, 4).build(), 100, seed);
      assertThat(plan.head().references())
          .hasSize(2)
          .allSatisfy(
              r ->
                  assertThat(plan.figures().avoidableCost())
                      .isLessThanOrEqualTo(r.avoidableCost()));
    }
  }

  @Test
  void anEmptyWeekIsAnEmptyPlan() {
    Plan plan = Plans.of(new SmallPlant().build(), 10, 1);
    assertThat(plan.runs()).isEmpty();
    assertThat(plan.unplaced()).isEmpty();
    assertThat(plan.figures().avoidableCost()).isZero();
  }

  @Test
  void aPlanStartsFromAnEarlierOne() {
    Problem problem = RandomPlant.of(11, 30, 4).build();
    Plan good = Plans.of(problem, 400, 1);
    Plan again = new Planner(problem).plan(Plans.head(1, 5), Optional.of(good), Watcher.NONE);
    assertThat(again.figures().avoidableCost()).isLessThanOrEqualTo(good.figures().avoidableCost());
  }

  @Test
  void stoppingBeforehandGivesTheStart() {
    Problem problem = RandomPlant.of(12, 30, 4).build();
    Planner planner = new Planner(problem);
    planner.stop();
    Plan plan = planner.plan(Plans.head(1_000, 1), Optional.empty(), Watcher.NONE);
    assertThat(plan.head().stopped()).isTrue();
    assertThat(Audit.check(problem, plan)).isEmpty();
  }

  @Test
  void whatFindsNoPlaceIsSaidWithReasonAndCure() {
    Problem problem =
        new SmallPlant()
            .days(1)
            .job(job("10").due(START + 1_440).on("P1", "M1", 1_200))
            .job(job("11").due(START + 1_440).on("P1", "M2", 1_200))
            .build();
    Plan plan = Plans.of(problem, 20, 1);
    assertThat(plan.runs()).hasSize(2);
    Problem tight =
        new SmallPlant()
            .days(1)
            .job(job("10").due(START + 1_440).on("P1", "M1", 1_440))
            .job(job("11").due(START + 1_440).on("P1", "M2", 1_440))
            .build();
    Plan short_ = Plans.of(tight, 20, 1);
    assertThat(short_.unplaced())
        .singleElement()
        .satisfies(
            u -> {
              assertThat(u.reason()).contains("P1");
              assertThat(u.cure()).isNotEmpty();
            });
  }
}
