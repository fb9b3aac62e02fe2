package pressweek.solver;

import ai.timefold.solver.core.api.solver.Solver;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import pressweek.data.plan.Settings;
import pressweek.solver.model.PressWeek;
import pressweek.solver.search.Annealing;
import pressweek.solver.search.Neighbours;
import pressweek.solver.search.Pace;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.Timetable;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.WeekTables;

/**
 * Improves sequences by local search in phases of one design: rounds of annealing, each from the
 * best so far, then the moves of the solver library. With a time limit two searches with different
 * seeds go on side by side, and each round begins from the best of both; with a step limit there is
 * one, so that every machine finds the same.
 */
final class Search {
  /** Searches side by side under a time limit: the machines that this is for have two cores. */
  private static final int SEARCHES = 2;

  /** A search shorter than this is not begun. */
  private static final int SHORTEST_MILLIS = 20;

  /** Moves that are tried for each step of a step limit. */
  private static final int MOVES_A_STEP = 50;

  /**
   * Rounds of annealing: the share of the time that is over when a round ends, and how hot it
   * begins as a share of a small step uphill. The first only takes what lies by the way.
   */
  private static final Round[] LONG_ROUNDS = {
    new Round(0.04, 0.1), new Round(0.6, 1), new Round(0.8, 0.4), new Round(0.95, 0.1)
  };

  /**
   * A week of so few jobs is gone through in many rounds, some of them hot, since one ends in the
   * first valley and what is best may lie behind a ridge: the same jobs the other way round.
   */
  private static final int FEW_JOBS = 30;

  /** Moves for each job that such a round should have, and moves that a millisecond may bring. */
  private static final int MOVES_A_JOB = 1_500;

  private static final int MOVES_A_MILLI = 150;

  /** Rounds where the rough model is enough: each may forget what the one before has found. */
  private static final int FREE_ROUNDS = 4;

  /** Moves for each job in a round by the rough model. */
  private static final int ROUND_MOVES = 100;

  /** How hot such a round begins, as a share of what a job costs in the mean: at first, at last. */
  private static final double HOT_SHARE = 0.1;

  private static final double COOL_SHARE = 0.01;

  /** What a setter's minute is worth at first, as a multiple of its cost, in turn by the seed. */
  private static final double[] FIRST_PRICES = {2, 5};

  /** The logarithm of how far a setter price is tried from the best one. */
  private static final double PRICE_SPREAD = 0.7;

  /** A round of annealing, by its end as a share of the whole and its heat. */
  private record Round(double end, double heat) {}

  private Round[] rounds(Limits limits, boolean agrees) {
    if (week.jobCount() > FEW_JOBS) {
      return agrees ? evenRounds(FREE_ROUNDS, 1) : LONG_ROUNDS;
    }
    double moves =
        limits.steps() > 0
            ? (double) limits.steps() * MOVES_A_STEP
            : (double) limits.millis() * MOVES_A_MILLI;
    int count = (int) (moves / MOVES_A_JOB / Math.max(1, week.jobCount()));
    int most = Math.max(3, Math.min(30, count));
    return agrees ? evenRounds(most, 1, 0.3) : evenRounds(most, 3, 30, 1, 10, 100, 2);
  }

  private static Round[] evenRounds(int count, double... heats) {
    Round[] rounds = new Round[count];
    for (int i = 0; i < count; i++) {
      rounds[i] = new Round(0.98 * (i + 1) / count, heats[i % heats.length]);
    }
    return rounds;
  }

  private final WeekTables week;
  private final TimingPass pass;
  private final AtomicBoolean stopped = new AtomicBoolean();
  private long mostMillis = Long.MAX_VALUE;
  private final List<Solver<PressWeek>> running = new ArrayList<>();

  Search(WeekTables week) {
    this.week = week;
    pass = TimingPass.full(week);
  }

  void stop() {
    synchronized (running) {
      stopped.set(true);
      running.forEach(Solver::terminateEarly);
    }
  }

  /** Milliseconds that a search which time limits may take at most, whatever the settings. */
  void within(long millis) {
    mostMillis = millis;
  }

  boolean stopped() {
    return stopped.get();
  }

  /** Avoidable cost with a large price on every broken promise, to compare sequences by. */
  long cost(Sequences sequences) {
    return pass.value(sequences);
  }

  Sequences improve(Sequences start, Settings settings, long begunNanos, Watcher watcher) {
    Best best = new Best(start, cost(start), begunNanos, watcher);
    long whole = Math.min(settings.seconds() * 1000L, mostMillis);
    long millis = whole - (System.nanoTime() - begunNanos) / 1_000_000;
    if (stopped.get() || (settings.steps() == 0 && millis < SHORTEST_MILLIS)) {
      return start;
    }
    Neighbours neighbours = new Neighbours(week);
    int searches = settings.steps() > 0 ? 1 : SEARCHES;
    ExecutorService threads = Executors.newFixedThreadPool(searches);
    try {
      List<Future<?>> futures = new ArrayList<>();
      for (int i = 0; i < searches; i++) {
        long seed = settings.seed() + i;
        Limits limits = new Limits(seed, settings.steps(), System.nanoTime(), millis);
        futures.add(threads.submit(() -> search(neighbours, limits, best)));
      }
      for (Future<?> future : futures) {
        future.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      stop();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the search failed", e.getCause());
    } finally {
      threads.shutdown();
    }
    return best.sequences();
  }

  /** Seed and limits of one search; either steps or milliseconds limit it. */
  private record Limits(long seed, int steps, long begunNanos, long millis) {
    /** The share of the whole that is over. */
    double done(long moves) {
      return steps > 0
          ? moves / ((double) steps * MOVES_A_STEP)
          : (System.nanoTime() - begunNanos) / 1e6 / millis;
    }
  }

  private void search(Neighbours neighbours, Limits limits, Best best) {
    Annealing annealing = new Annealing(week, neighbours, best.sequences(), limits.seed());
    annealing.typicalStep(moves -> stopped.get() ? 1 : limits.done(moves));
    double begun = roughRounds(annealing, limits, best);
    double rest = 1 - begun;
    double first = begun;
    for (Round round : rounds(limits, annealing.agrees())) {
      double from = begun;
      double end = first + rest * round.end();
      Pace pace = moves -> stopped.get() ? 1 : (limits.done(moves) - from) / (end - from);
      begun = end;
      if (pace.done(annealing.moves()) >= 1) {
        continue;
      }
      annealing.take(best.sequences(), best.cost());
      double step = annealing.typicalStep(pace);
      annealing.round(
          round.heat() * (annealing.agrees() ? annealing.meanCost() : step),
          pace,
          () -> best.offer(annealing.best(), annealing.bestCost()));
    }
    if (!stopped.get() && week.jobCount() > 1) {
      solve(limits, best);
    }
  }

  /**
   * Rounds by the rough model, each at a setter price near the one that served best so far; answers
   * the share of the whole that they took.
   */
  private double roughRounds(Annealing annealing, Limits limits, Best best) {
    double share = annealing.agrees() ? 0 : roughShare();
    double price = FIRST_PRICES[(int) (limits.seed() & 1)];
    SplittableRandom random = new SplittableRandom(limits.seed());
    long least = Long.MAX_VALUE;
    double length = 0;
    for (double from = limits.done(annealing.moves()); from + length / 2 < share; ) {
      double tried = price * Math.exp(PRICE_SPREAD * (2 * random.nextDouble() - 1));
      double left = 1 - from / share;
      double heat = annealing.meanCost() * (COOL_SHARE + (HOT_SHARE - COOL_SHARE) * left);
      long begun = annealing.moves();
      double most = ROUND_MOVES * (double) week.jobCount();
      double until = share;
      Pace pace =
          moves ->
              stopped.get()
                  ? 1
                  : Math.max((moves - begun) / most, limits.done(moves) >= until ? 1 : 0);
      long cost =
          annealing.roughRound(
              tried, heat, pace, () -> best.offer(annealing.best(), annealing.bestCost()));
      if (cost < least) {
        least = cost;
        price = tried;
      }
      double now = limits.done(annealing.moves());
      length = now - from;
      from = stopped.get() ? 1 : now;
    }
    return share == 0 ? 0 : Math.max(share, limits.done(annealing.moves()));
  }

  /** The share of the time for which a week is searched by the rough model. */
  private double roughShare() {
    int jobs = week.jobCount();
    return jobs <= FEW_JOBS ? 0 : Double.parseDouble(System.getProperty("rs", "0.5"));
  }

  /** The last phase: the solver library's own moves, from the best of all. */
  private void solve(Limits limits, Best best) {
    long left = limits.millis() - (System.nanoTime() - limits.begunNanos()) / 1_000_000;
    int steps = (int) Math.ceil(limits.steps() * (1 - LONG_ROUNDS[LONG_ROUNDS.length - 1].end()));
    if (limits.steps() == 0 && left < SHORTEST_MILLIS) {
      return;
    }
    Solver<PressWeek> solver =
        new SearchConfig(best.cost(), week.jobCount())
            .factory(limits.seed(), steps, left)
            .buildSolver();
    synchronized (running) {
      if (stopped.get()) {
        return;
      }
      running.add(solver);
    }
    solver.addEventListener(
        event -> {
          Sequences found = event.getNewBestSolution().sequences();
          best.offer(found, TimingPass.full(week).value(found));
        });
    solver.solve(new PressWeek(week, best.sequences()));
    synchronized (running) {
      running.remove(solver);
    }
  }

  /** The best sequences that any search has found. */
  private final class Best {
    private final long begunNanos;
    private final Watcher watcher;
    private Sequences sequences;
    private long cost;
    private long toldNanos;

    Best(Sequences sequences, long cost, long begunNanos, Watcher watcher) {
      this.sequences = sequences;
      this.cost = cost;
      this.begunNanos = begunNanos;
      this.watcher = watcher;
    }

    synchronized Sequences sequences() {
      return sequences;
    }

    synchronized long cost() {
      return cost;
    }

    synchronized void offer(Sequences found, long foundCost) {
      if (foundCost >= cost) {
        return;
      }
      cost = foundCost;
      sequences = found;
      long now = System.nanoTime();
      if (now - toldNanos > 500_000_000L) {
        toldNanos = now;
        watcher.seen(
            new Progress((now - begunNanos) / 1_000_000, Timetable.of(week, found).figures()));
      }
    }
  }
}
