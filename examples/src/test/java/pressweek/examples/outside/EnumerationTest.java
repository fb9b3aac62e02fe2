package pressweek.examples.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.Problem;
import pressweek.data.problem.SmallPlant;

/** The planner against all ways to lay out a small week, timed by the same timing pass. */
class EnumerationTest {
  private static final int STEPS = 2_000;

  @Test
  void everyWayIsTriedOnce() {
    SmallPlant plant = new SmallPlant();
    for (int job = 1; job <= 4; job++) {
      plant.job(JobBuilder.job("" + job).on("P1", "M1", 60).on("P2", "M2", 60));
    }
    assertThat(Enumeration.ways(4, 2)).isEqualTo(24 * 5);
    assertThat(Enumeration.of(plant.build()).count()).isEqualTo(24 * 5);
    assertThat(Enumeration.ways(3, 3)).isEqualTo(6 * 10);
  }

  @Test
  void plannerFindsTheBestOfAllWays() {
    assertThat(misses(1, 24, STEPS)).isEmpty();
  }

  @Test
  @Tag("full")
  void plannerFindsTheBestOfAllWaysInManyWeeks() {
    assertThat(misses(25, 50, STEPS)).isEmpty();
    assertThat(misses(1_001, 1_200, 2 * STEPS)).isEmpty();
  }

  /** Weeks of which the planner did not find the best plan. */
  private static List<String> misses(long firstSeed, long lastSeed, int steps) {
    List<String> misses = new ArrayList<>();
    for (long seed = firstSeed; seed <= lastSeed; seed++) {
      Problem problem = week(seed);
      long least = Enumeration.of(problem).leastCost();
      long found = Planned.inSteps(problem, steps, seed).figures().avoidableCost();
      if (found > least) {
        misses.add(String.format(Locale.ROOT, "seed %d: %d, best %d", seed, found, least));
      }
    }
    return misses;
  }

  /** Every second week round the clock; every sixth has 8 jobs, every fifth three presses. */
  private static Problem week(long seed) {
    int presses = seed % 5 == 0 ? 3 : 2;
    int jobs = presses == 3 ? 6 : seed % 6 == 0 ? 8 : 7;
    return seed % 2 == 0
        ? DrawnWeek.roundTheClock(seed, jobs, presses)
        : DrawnWeek.withEverything(seed, jobs, presses);
  }
}
