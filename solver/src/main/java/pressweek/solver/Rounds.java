package pressweek.solver;

import java.util.SplittableRandom;
import pressweek.solver.search.Annealing;

/**
 * When the rounds of a search end and how hot they begin: the schedule of its phases, apart from
 * what they do.
 */
final class Rounds {
  /** Where the last round ends, for the solver library to go on. */
  private static final double END = 0.98;

  /**
   * A week of so few jobs is gone through in many rounds, some of them hot, since one ends in the
   * first valley and what is best may lie behind a ridge: the same jobs the other way round.
   */
  static final int FEW_JOBS = 30;

  /** The share of the time for which a larger week is searched by the rough model first. */
  static final double ROUGH_SHARE = 0.4;

  /**
   * Rounds of annealing: the share of the time that is over when a round ends, and how hot it
   * begins as a share of a small step uphill. The first only takes what lies by the way.
   */
  private static final Round[] LONG = {
    new Round(0.04, 0.1), new Round(0.6, 1), new Round(0.8, 0.4), new Round(0.95, 0.1)
  };

  /** The share of the steps that is left for the last phase. */
  static final double LAST_SHARE = 1 - LONG[LONG.length - 1].end();

  /** Moves for each job that a round of a small week should have. */
  private static final int MOVES_A_JOB = 1_500;

  /**
   * Rounds where the rough model is enough: each may forget what the one before has found, and the
   * last looks around the best of them.
   */
  private static final Round[] FREE = {
    new Round(0.28, 1), new Round(0.56, 1), new Round(0.84, 1), new Round(END, 0.05)
  };

  private static final int FEWEST = 3;
  private static final int MOST = 30;

  /** How hot they begin, in turn: where the rough model is enough, and else. */
  private static final double[] FREE_HEATS = {1, 0.05};

  private static final double[] FEW_HEATS = {3, 30, 1, 10, 100, 2};

  private Rounds() {}

  /** A round of annealing, by its end as a share of the whole and its heat. */
  record Round(double end, double heat) {}

  /**
   * The rounds of a search.
   *
   * @param jobs jobs of the week
   * @param moves moves that the search may come to
   * @param agrees whether the rough model is enough; heats are then shares of what a job costs in
   *     the mean, else of a small step uphill
   */
  static Round[] of(int jobs, double moves, boolean agrees) {
    if (jobs > FEW_JOBS) {
      return agrees ? FREE.clone() : LONG.clone();
    }
    int count = (int) (moves / MOVES_A_JOB / Math.max(1, jobs));
    int bounded = Math.max(FEWEST, Math.min(MOST, count));
    return even(bounded, agrees ? FREE_HEATS : FEW_HEATS);
  }

  private static Round[] even(int count, double... heats) {
    Round[] rounds = new Round[count];
    for (int i = 0; i < count; i++) {
      rounds[i] = new Round(END * (i + 1) / count, heats[i % heats.length]);
    }
    return rounds;
  }

  /** Rounds by the rough model: each at a setter price near the one that served best so far. */
  static final class Rough {
    /** Moves for each job in a round, as {@link Annealing#moves} counts. */
    private static final int MOVES = 10;

    /** So many rounds at least. */
    private static final int LEAST = 4;

    /** How hot a round begins, as a share of what a job costs in the mean: at first, at last. */
    private static final double HOT = 0.1;

    private static final double COOL = 0.01;

    /** What a setter's minute is worth at first, as a multiple of its cost, in turn by the seed. */
    private static final double[] FIRST_PRICES = {2, 5};

    /** The logarithm of how far a price is tried from the best one. */
    private static final double SPREAD = 0.7;

    /**
     * So many rounds at most, times the jobs of the week: in ten minutes on a week of a thousand
     * jobs they found hardly anything more after that, and the time does more good in rounds by the
     * timing pass.
     */
    private static final double MOST = 600_000;

    private final SplittableRandom random;
    private final double mostMoves;
    private final double mostRounds;
    private double share = ROUGH_SHARE;
    private double price;
    private double tried;
    private long least = Long.MAX_VALUE;

    Rough(int jobs, long seed) {
      random = new SplittableRandom(seed);
      mostMoves = MOVES * (double) jobs;
      mostRounds = MOST / jobs;
      price = FIRST_PRICES[(int) (seed & 1)];
    }

    /** The setter price of the next round. */
    double nextPrice() {
      tried = price * Math.exp(SPREAD * (2 * random.nextDouble() - 1));
      return tried;
    }

    /** Told what came of the last price. */
    void cameTo(long cost) {
      if (cost < least) {
        least = cost;
        price = tried;
      }
    }

    /** How hot a round begins, as a share of what a job costs in the mean, by the share done. */
    double heat(double done) {
      return COOL + (HOT - COOL) * (1 - Math.min(1, done / share));
    }

    /** Told how long a round was, as a share of the whole. */
    void lasted(double round) {
      share = Math.min(share, mostRounds * round);
    }

    /** The share of the whole by which they are over. */
    double share() {
      return share;
    }

    /** How far a round has come, by its moves and the share of the whole since it began. */
    double done(long moves, double since) {
      return Math.max(moves / mostMoves, since * LEAST / ROUGH_SHARE);
    }
  }
}
