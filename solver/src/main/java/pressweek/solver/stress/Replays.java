package pressweek.solver.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import pressweek.data.plan.Plan;
import pressweek.solver.timing.PlanPass;

/** Replays a plan, side by side on several threads; what comes of it is the same on any number. */
final class Replays {
  /** Replays that a thread takes at a time. */
  private static final int BATCH = 16;

  private final Week week;
  private final List<PlanPass> passes = new ArrayList<>();
  private final int threads;
  private final int daysOn;
  private volatile boolean stopped;

  /**
   * Replays of a plan.
   *
   * @param daysOn days after the horizon for which work goes on
   */
  Replays(Plan plan, long seed, int threads, int daysOn) {
    this.week = new Week(plan, seed);
    this.threads = threads;
    this.daysOn = daysOn;
  }

  /** Ends soon; what is being replayed comes to nothing. */
  void stop() {
    stopped = true;
  }

  Week week() {
    return week;
  }

  /** Replays of another plan under the same luck. */
  Replays other(Plan plan) {
    return new Replays(plan, week.seed, threads, daysOn);
  }

  /**
   * So many replays in a situation.
   *
   * @param details keeps what is needed to say which things the trouble came from
   * @throws IllegalStateException when it was stopped
   */
  Outcome of(Situation situation, int replays, boolean details) {
    Outcome outcome = replay(situation, replays, details);
    if (stopped) {
      throw new IllegalStateException("stopped while replaying");
    }
    return outcome;
  }

  private Outcome replay(Situation situation, int replays, boolean details) {
    Outcome outcome = new Outcome(week, replays, details);
    AtomicInteger next = new AtomicInteger();
    int used = Math.max(1, Math.min(threads, replays / BATCH));
    while (passes.size() < used) {
      passes.add(new PlanPass(week.plan, daysOn));
    }
    if (used == 1) {
      work(passes.get(0), situation, outcome, next);
      return outcome;
    }
    ExecutorService pool = Executors.newFixedThreadPool(used);
    try {
      List<Future<?>> jobs = new ArrayList<>();
      for (PlanPass pass : passes.subList(0, used)) {
        jobs.add(pool.submit(() -> work(pass, situation, outcome, next)));
      }
      for (Future<?> job : jobs) {
        job.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while replaying", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a replay failed", e.getCause());
    } finally {
      pool.shutdownNow();
    }
    return outcome;
  }

  private void work(PlanPass pass, Situation situation, Outcome outcome, AtomicInteger next) {
    Luck luck = new Luck(week, pass, situation);
    for (int from = next.getAndAdd(BATCH); from < outcome.replays(); from = next.getAndAdd(BATCH)) {
      for (int r = from; r < Math.min(outcome.replays(), from + BATCH) && !stopped; r++) {
        luck.bring(r);
        outcome.cost[r] = pass.carryOut();
        count(pass, outcome, r);
        if (outcome.ready.length > 0) {
          keep(luck, outcome, r);
        }
      }
    }
  }

  private void count(PlanPass pass, Outcome outcome, int replay) {
    int onTime = 0;
    long lateMin = 0;
    for (int i = 0; i < week.due.length; i++) {
      int ready = pass.ready(i);
      onTime += ready <= week.due[i] ? 1 : 0;
      lateMin += Math.max(0, ready - week.due[i]);
      if (outcome.ready.length > 0) {
        outcome.ready[i][replay] = ready;
      }
    }
    outcome.onTime[replay] = onTime;
    outcome.lateMin[replay] = lateMin;
  }

  private static void keep(Luck luck, Outcome outcome, int replay) {
    for (int i = 0; i < luck.extra.length; i++) {
      outcome.extra[i][replay] = luck.extra[i];
    }
    for (int p = 0; p < luck.repair.length; p++) {
      outcome.repair[p][replay] = luck.repair[p];
    }
    for (int k = 0; k < luck.late.length; k++) {
      outcome.late[k][replay] = luck.late[k];
    }
  }
}
