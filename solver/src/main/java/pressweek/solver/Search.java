package pressweek.solver;

import ai.timefold.solver.core.api.solver.Solver;
import java.util.ArrayList;
import java.util.List;
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
 * Improves sequences by local search in phases of one design ({@link Rounds}): annealing by a rough
 * model, rounds of annealing by the timing pass, each from the best so far, then the moves of the
 * solver library. With a time limit searches with different seeds go on side by side on all cores,
 * and each round begins from the best of all; with a step limit there is one, so that every machine
 * finds the same.
 */
final class Search {
  /** Searches side by side under a time limit, at most; no more than there are cores. */
  private static final int MOST_SEARCHES = 4;

  /** A search shorter than this is not begun. */
  private static final int SHORTEST_MILLIS = 20;

  /** Moves that are tried for each step of a step limit. */
  private static final int MOVES_A_STEP = 50;

  /** Moves that a millisecond may bring. */
  private static final int MOVES_A_MILLI = 150;

  private final WeekTables week;
  private final TimingPass pass;
  private final AtomicBoolean stopped = new AtomicBoolean();
  private long mostMillis = Long.MAX_VALUE;
  private boolean near;
  private int sideBySide = Math.min(MOST_SEARCHES, Runtime.getRuntime().availableProcessors());
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

  /** How many searches a time limit has go on side by side. */
  void searches(int count) {
    sideBySide = Math.max(1, count);
  }

  /** Has the search stay near its start: without rounds by the rough model, which go far. */
  void near(boolean stays) {
    near = stays;
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
    int searches = settings.steps() > 0 ? 1 : sideBySide;
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
    /** Moves that the search may come to. */
    double moves() {
      return steps > 0 ? (double) steps * MOVES_A_STEP : (double) millis * MOVES_A_MILLI;
    }

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
    for (Rounds.Round round : Rounds.of(week.jobCount(), limits.moves(), annealing.agrees())) {
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

  /** Rounds by the rough model; answers the share of the whole that they took. */
  private double roughRounds(Annealing annealing, Limits limits, Best best) {
    if (near || annealing.agrees() || week.jobCount() <= Rounds.FEW_JOBS) {
      return 0;
    }
    Rounds.Rough rough = new Rounds.Rough(week.jobCount(), limits.seed());
    double from = limits.done(annealing.moves());
    double length = 0;
    while (!stopped.get() && from + length / 2 < rough.share()) {
      double begun = from;
      long before = annealing.moves();
      Pace pace =
          moves -> stopped.get() ? 1 : rough.done(moves - before, limits.done(moves) - begun);
      rough.cameTo(
          annealing.roughRound(
              rough.nextPrice(),
              rough.heat(from) * annealing.meanCost(),
              pace,
              () -> best.offer(annealing.best(), annealing.bestCost())));
      from = limits.done(annealing.moves());
      length = from - begun;
      rough.lasted(length);
    }
    return from;
  }

  /** The last phase: the solver library's own moves, from the best of all. */
  private void solve(Limits limits, Best best) {
    long left = limits.millis() - (System.nanoTime() - limits.begunNanos()) / 1_000_000;
    int steps = (int) Math.ceil(limits.steps() * Rounds.LAST_SHARE);
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
