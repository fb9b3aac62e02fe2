package pressweek.examples.outside;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pressweek.data.plan.Bound;
import pressweek.data.problem.Problem;
import pressweek.solver.bound.LowerBound;

/** The lower bound against the best of all ways to lay out a small week. */
class BoundTest {
  @Test
  void theBestOfAllWaysIsNoCheaper() {
    int near = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Problem problem =
          seed % 2 == 0
              ? DrawnWeek.roundTheClock(seed, 6, 2)
              : DrawnWeek.withEverything(seed, 6, 2);
      long least = Enumeration.of(problem).leastCost();
      long bound = LowerBound.of(problem).map(Bound::amount).orElse(0L);
      assertThat(bound).as("seed %d", seed).isLessThanOrEqualTo(least);
      near += 2 * bound > least ? 1 : 0;
    }
    assertThat(near).as("weeks in which it is more than half of the best").isGreaterThan(10);
  }
}
