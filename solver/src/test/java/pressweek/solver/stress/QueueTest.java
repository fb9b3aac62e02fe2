package pressweek.solver.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.SmallPlant;
import pressweek.data.problem.Uncertainty;
import pressweek.data.problem.Uncertainty.Breakdown;
import pressweek.data.problem.Uncertainty.Spread;
import pressweek.data.stress.Estimate;

/** Replays of one press against closed forms. */
class QueueTest {
  private static final int FAR = Integer.MAX_VALUE / 4;
  private static final double HOUR = 60;

  private static Uncertainty breaking(double everyH, double repairMin, double repairSpread) {
    return Uncertainty.NONE.withBreakdown(new Breakdown(everyH, repairMin, repairSpread));
  }

  /**
   * A run of t0 minutes on a press that fails after f minutes of running in the mean and is
   * repaired in m: it takes t0 (1 + m / f) in the mean, with variance t0 E[R^2] / f. That is the
   * effective process time of W. J. Hopp, M. L. Spearman, Factory Physics, chapter 8 (mean t0 / A
   * with availability A = f / (f + m)), for preemptive outages; from memory.
   */
  @Test
  void aRunWithBreakdownsTakesItsEffectiveTime() {
    int t0 = 3_000;
    double f = 10 * HOUR;
    double m = 90;
    double spread = 0.8;
    Replays replays =
        OnePress.replays(new OnePress().days(30).job("1", SmallPlant.START, FAR, t0).plan(), 3);
    int mount =
        replays.of(Situation.of(Uncertainty.NONE), 1, true).ready[0][0] - SmallPlant.START - t0;
    Outcome outcome = replays.of(Situation.of(breaking(f / HOUR, m, 100 * spread)), 20_000, true);

    double[] minutes = new double[outcome.replays()];
    double[] squares = new double[minutes.length];
    double mean = t0 * (1 + m / f);
    for (int r = 0; r < minutes.length; r++) {
      minutes[r] = outcome.ready[0][r] - SmallPlant.START - mount;
      squares[r] = (minutes[r] - mean) * (minutes[r] - mean);
    }
    Estimate found = Estimate.of(minutes);
    assertThat(mean).isBetween(found.low() - 0.5, found.high() + 0.5);
    assertThat(mean).isCloseTo(t0 / (f / (f + m)), within(1e-9));
    Estimate variance = Estimate.of(squares);
    double expected = t0 * m * m * (1 + spread * spread) / f;
    assertThat(expected).isBetween(variance.low() * 0.99, variance.high() * 1.01);
  }

  /**
   * Jobs come to a press by chance and wait for those before them: time in the system is E[C] +
   * lambda E[C^2] / (2 (1 - rho)), the formula of Pollaczek and Khinchine (D. Gross, C. M. Harris,
   * Fundamentals of Queueing Theory, chapter 5, M/G/1; from memory). C is lognormal and lengthened
   * by breakdowns as above.
   */
  @Test
  void aQueueBeforeOnePressIsAsLongAsPollaczekAndKhinchineSay() {
    int service = 200;
    double cv = 0.7;
    double f = 20 * HOUR;
    double m = 120;
    double meanC = service * (1 + m / f);
    double varC = Math.pow(1 + m / f, 2) * Math.pow(cv * service, 2) + service * (2 * m * m) / f;
    double lambda = 0.55 / meanC;
    double expected = meanC + lambda * (varC + meanC * meanC) / (2 * (1 - 0.55));
    Uncertainty luck = breaking(f / HOUR, m, 100).withCycle(new Spread(100, 100 * cv));

    double[] means = new double[30];
    for (int i = 0; i < means.length; i++) {
      means[i] = timeInSystem(i, service, lambda, luck);
    }
    Estimate found = Estimate.of(means);
    assertThat(expected).isBetween(found.low(), found.high());
    assertThat(found.high() - found.low()).isLessThan(0.15 * expected);
  }

  private static double timeInSystem(int seed, int service, double lambda, Uncertainty luck) {
    int jobs = 900;
    int first = 200;
    SplittableRandom random = new SplittableRandom(seed);
    OnePress press = new OnePress().days((int) (jobs / lambda / SmallPlant.DAY * 1.3));
    int[] arrival = new int[jobs];
    double at = SmallPlant.START;
    for (int i = 0; i < jobs; i++) {
      at += -Math.log(1 - random.nextDouble()) / lambda;
      arrival[i] = (int) Math.rint(at);
      press.job("J" + i, arrival[i], FAR, service);
    }
    Outcome outcome = OnePress.replays(press.plan(), 1000 + seed).of(Situation.of(luck), 4, true);
    double sum = 0;
    for (int r = 0; r < outcome.replays(); r++) {
      for (int i = first; i < jobs; i++) {
        sum += outcome.ready[i][r] - arrival[i];
      }
    }
    return sum / outcome.replays() / (jobs - first);
  }
}
