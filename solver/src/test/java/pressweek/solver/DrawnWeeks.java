package pressweek.solver;

import java.util.SplittableRandom;
import pressweek.data.problem.Problem;

/** Weeks drawn for tests, from idle to badly overloaded: up to 41 lines on up to seven presses. */
public final class DrawnWeeks {
  private DrawnWeeks() {}

  /** A week without arrangements. */
  public static Problem plain(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int jobs = 2 + random.nextInt(40);
    int presses = 1 + random.nextInt(7);
    return RandomPlant.of(seed, jobs, presses).load(0.3 + random.nextDouble()).build();
  }

  /** The same week with things arranged beside. */
  public static Problem arranged(long seed) {
    return RandomArrangements.on(plain(seed), seed);
  }
}
