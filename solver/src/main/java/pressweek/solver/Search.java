package pressweek.solver;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import pressweek.data.plan.Settings;
import pressweek.solver.model.PressWeek;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.Timetable;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.WeekTables;

/**
 * Improves sequences by local search: simulated annealing from a start, in rounds, each from the
 * best so far. With a time limit two searches with different seeds go on side by side and the
 * better one counts; with a step limit there is one, so that every machine finds the same.
 */
final class Search {
  /** Searches side by side under a time limit: the machines that this is for have two cores. */
  private static final int SEARCHES = 2;

  /** A search shorter than this is not begun. */
  private static final int SHORTEST_MILLIS = 20;

  private final WeekTables week;
  private final TimingPass pass;
  private final AtomicBoolean stopped = new AtomicBoolean();
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

  boolean stopped() {
    return stopped.get();
  }

  /** Avoidable cost with a large price on every broken promise, to compare sequences by. */
  long cost(Sequences sequences) {
    long cost = pass.run(sequences);
    return pass.broken() > 0 ? Long.MAX_VALUE / 4 + pass.broken() : cost;
  }

  Sequences improve(Sequences start, Settings settings, long begunNanos, Watcher watcher) {
    Best best = new Best(start, cost(start), begunNanos, watcher);
    if (week.jobCount() < 2) {
      return start;
    }
    long millis = settings.seconds() * 1000L - (System.nanoTime() - begunNanos) / 1_000_000;
    if (stopped.get() || (settings.steps() == 0 && millis < SHORTEST_MILLIS)) {
      return start;
    }
    SearchConfig config = new SearchConfig(best.cost(), week.jobCount());
    List<SolverFactory<PressWeek>> factories = new ArrayList<>();
    int searches = settings.steps() > 0 ? 1 : SEARCHES;
    for (int i = 0; i < searches; i++) {
      factories.add(config.factory(settings.seed() + i, settings.steps(), millis));
    }
    runAll(factories, best);
    return best.sequences();
  }

  private void runAll(List<SolverFactory<PressWeek>> factories, Best best) {
    ExecutorService threads = Executors.newFixedThreadPool(factories.size());
    try {
      List<Future<?>> futures = new ArrayList<>();
      Sequences from = best.sequences();
      for (SolverFactory<PressWeek> factory : factories) {
        futures.add(threads.submit(() -> solve(factory, from, best)));
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
  }

  private void solve(SolverFactory<PressWeek> factory, Sequences from, Best best) {
    Solver<PressWeek> solver = factory.buildSolver();
    synchronized (running) {
      if (stopped.get()) {
        return;
      }
      running.add(solver);
    }
    solver.addEventListener(
        event -> best.offer(event.getNewBestSolution().sequences(), event.getNewBestSolution()));
    solver.solve(new PressWeek(week, from));
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

    synchronized void offer(Sequences found, PressWeek solution) {
      var score = solution.score();
      long foundCost =
          score == null || score.hardScore() < 0 ? Search.this.cost(found) : -score.softScore();
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
