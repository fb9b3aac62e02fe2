package pressweek.solver;

import static org.assertj.core.api.Assertions.assertThatCode;

import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Problem;
import pressweek.solver.model.PressWeek;
import pressweek.solver.timing.Dispatch;
import pressweek.solver.timing.WeekTables;

/** The solver's own full check of scores and undone moves finds nothing. */
final class FullAssertTest {
  @Test
  void noScoreIsCorrupted() {
    for (long seed = 1; seed <= 3; seed++) {
      solve(RandomPlant.of(seed, 18, 4).build(), seed);
      solve(RandomArrangements.on(RandomPlant.of(seed, 18, 4).build(), seed), seed);
    }
  }

  @Test
  @Tag("full")
  void noScoreOfFiftyPlantsIsCorrupted() {
    for (long seed = 4; seed <= 28; seed++) {
      solve(RandomPlant.of(seed, 18, 4).build(), seed);
      solve(RandomArrangements.on(RandomPlant.of(seed, 18, 4).build(), seed), seed);
    }
  }

  private static void solve(Problem problem, long seed) {
    WeekTables week = new WeekTables(problem);
    SolverConfig config =
        new SearchConfig(1_000_000, 18)
            .config(seed, 60, 0)
            .withEnvironmentMode(EnvironmentMode.FULL_ASSERT);
    PressWeek start = new PressWeek(week, new Dispatch(week).earliestDueDate());
    assertThatCode(() -> SolverFactory.<PressWeek>create(config).buildSolver().solve(start))
        .doesNotThrowAnyException();
  }
}
