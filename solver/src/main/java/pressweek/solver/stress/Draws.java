package pressweek.solver.stress;

/**
 * Numbers drawn for a thing in a replay: each depends on the seed, the kind of number, the thing's
 * id, the number of the replay and how many have been drawn for it, never on what was drawn for
 * others. So two plans are replayed under the same luck. The mixing is that of SplitMix64 (G. L.
 * Steele, D. Lea, C. H. Flood, OOPSLA 2014).
 */
final class Draws {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final long FNV_OFFSET = 0xCBF29CE484222325L;
  private static final long FNV_PRIME = 0x100000001B3L;
  private static final double UNIT = 0x1.0p-53;
  private static final double SQUEEZE = 0.0331;

  private long state;

  /** The spread of the last lognormal number, with variance and deviation of its logarithm. */
  private double lastSpread;

  private double variance;
  private double deviation;

  /** A key for a kind of number of a thing. */
  static long key(long seed, String kind, String id) {
    return mix(mix(mix(seed + GOLDEN) ^ hash(kind)) ^ hash(id));
  }

  private static long hash(String text) {
    long hash = FNV_OFFSET;
    for (int i = 0; i < text.length(); i++) {
      hash = (hash ^ text.charAt(i)) * FNV_PRIME;
    }
    return hash;
  }

  private static long mix(long value) {
    long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** Begins with the numbers of a key in a replay. */
  Draws begin(long key, int replay) {
    state = mix(key + GOLDEN * (replay + 1L));
    return this;
  }

  /** A number between 0 and 1, both left out. */
  double uniform() {
    state += GOLDEN;
    return ((mix(state) >>> 11) + 0.5) * UNIT;
  }

  /** A number of the standard normal distribution. */
  double normal() {
    return Normal.quantile(uniform());
  }

  /** A number of the exponential distribution of mean 1. */
  double exponential() {
    return -StrictMath.log(uniform());
  }

  /** A number of mean 1 of the lognormal distribution with a coefficient of variation. */
  double lognormal(double spread) {
    if (spread <= 0) {
      return 1;
    }
    if (spread != lastSpread) {
      lastSpread = spread;
      variance = StrictMath.log(1 + spread * spread);
      deviation = StrictMath.sqrt(variance);
    }
    return StrictMath.exp(deviation * normal() - variance / 2);
  }

  /**
   * A number of the beta distribution with a mean and a coefficient of variation, by two of the
   * gamma distribution. The variance is at most half of what any share of that mean can have.
   */
  double beta(double mean, double spread) {
    if (mean <= 0 || mean >= 1 || spread <= 0) {
      return mean;
    }
    double square = Math.min(spread * mean * (spread * mean), mean * (1 - mean) / 2);
    double sum = mean * (1 - mean) / square - 1;
    double hit = gamma(mean * sum);
    double miss = gamma((1 - mean) * sum);
    return hit / (hit + miss);
  }

  /** Gamma of scale 1: G. Marsaglia, W. W. Tsang, ACM TOMS 26 (2000) 363-372. */
  private double gamma(double shape) {
    if (shape < 1) {
      return gamma(shape + 1) * StrictMath.pow(uniform(), 1 / shape);
    }
    double d = shape - 1.0 / 3;
    double c = 1 / StrictMath.sqrt(9 * d);
    while (true) {
      double x = normal();
      double v = 1 + c * x;
      if (v > 0) {
        double cube = v * v * v;
        double u = uniform();
        boolean surely = u < 1 - SQUEEZE * x * x * x * x;
        if (surely || StrictMath.log(u) < 0.5 * x * x + d - d * cube + d * StrictMath.log(cube)) {
          return d * cube;
        }
      }
    }
  }
}
