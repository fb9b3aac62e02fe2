package pressweek.solver;

import static org.assertj.core.api.Assertions.assertThatCode;

import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import org.junit.jupiter.api.Test;
import pressweek.solver.model.PressWeek;
import pressweek.solver.timing.Dispatch;
import pressweek.solver.timing.WeekTables;

/** The solver's own full check of scores and undone moves finds nothing. */
final class FullAssertTest {
  @Test
  void noScoreIsCorrupted() {
    for (long seed = 1; seed <= 8; seed++) {
      WeekTables week = new WeekTables(RandomPlant.of(seed, 18, 4).build());
      SolverConfig config =
          new SearchConfig(1_000_000, 18)
              .config(seed, 60, 0)
              .withEnvironmentMode(EnvironmentMode.FULL_ASSERT);
      PressWeek start = new PressWeek(week, new Dispatch(week).earliestDueDate());
      assertThatCode(() -> SolverFactory.<PressWeek>create(config).buildSolver().solve(start))
          .doesNotThrowAnyException();
    }
  }
}
