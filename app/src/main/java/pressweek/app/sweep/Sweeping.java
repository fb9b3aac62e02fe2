package pressweek.app.sweep;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.SweepResult;

/**
 * Puts the tasks of a sweep into the queue of a store and waits until all are done, by whom ever.
 * What is in the store already is not computed again, so the same sweep goes on where it was broken
 * off.
 */
public final class Sweeping {
  private static final Duration LOOK = Duration.ofMillis(200);

  /** So many looks between two checks that what is missing is still in the queue. */
  private static final int LOOKS_TO_QUEUE = 50;

  private final Store store;
  private final CountDownLatch stopped = new CountDownLatch(1);

  /** Is told how a sweep goes on. */
  @FunctionalInterface
  public interface Watcher {
    /** So far. */
    void seen(Progress progress);
  }

  /**
   * How far a sweep is.
   *
   * @param all tasks of it, each counted once
   * @param reused those that were in the store already
   * @param done those that were computed since
   * @param faults those of them that failed
   * @param elapsed since they were put into the queue
   */
  public record Progress(int all, int reused, int done, int faults, Duration elapsed) {
    /** Tasks that are still to come. */
    public int left() {
      return all - reused - done;
    }

    /** Time left if the rest goes as what was done; nothing while none is. */
    public Duration timeLeft() {
      return done == 0 ? Duration.ZERO : elapsed.multipliedBy(left()).dividedBy(done);
    }
  }

  /**
   * What came of a sweep.
   *
   * @param sweep the sweep
   * @param results results by task; a task without one is not done yet
   * @param progress how far it came
   */
  public record Swept(Sweep sweep, Map<String, SweepResult> results, Progress progress) {
    public Swept {
      results = Map.copyOf(results);
    }

    /** True when every plan is there. */
    public boolean isWhole() {
      return sweep.cases().stream().allMatch(each -> SweepLists.fault(this, each).isEmpty());
    }

    /** True when a task failed by a bug, or a plan breaks a hard rule. */
    public boolean isBroken() {
      return progress.faults() > 0
          || sweep.cases().stream()
              .flatMap(each -> SweepLists.figures(this, each).stream())
              .anyMatch(figures -> figures.findings() > 0);
    }
  }

  /** What comes of a sweep of which nothing can be planned. */
  public static Swept nothing(SweepReading.Read read) {
    return new Swept(read.sweep(), Map.of(), new Progress(0, 0, 0, 0, Duration.ZERO));
  }

  /** Sweeps on a store. */
  public Sweeping(Store store) {
    this.store = store;
  }

  /** Ends soon, with what is done. */
  public void stop() {
    stopped.countDown();
  }

  /**
   * Makes the plans of a sweep.
   *
   * @param read the sweep with the problems of its tasks
   * @param watcher told of every look at what is done
   */
  public Swept sweep(SweepReading.Read read, Watcher watcher)
      throws StoreTrouble, InterruptedException {
    Map<String, SweepTask> missing = new LinkedHashMap<>(read.tasks());
    Map<String, SweepResult> results = new LinkedHashMap<>();
    store.sweeps().forgetFaults(missing.keySet());
    store
        .sweeps()
        .results(missing.keySet())
        .forEach(
            (key, result) -> {
              results.put(key, result);
              missing.remove(key);
            });
    int reused = results.size();
    keepProblems(read, missing);
    SchedulerClient client = Worker.client(store);
    long begun = System.nanoTime();
    queue(client, missing);
    Progress progress = progress(read, reused, results, begun);
    watcher.seen(progress);
    for (int look = 1; !missing.isEmpty(); look++) {
      if (stopped.await(LOOK.toMillis(), TimeUnit.MILLISECONDS)) {
        break;
      }
      if (look % LOOKS_TO_QUEUE == 0) {
        queue(client, missing);
      }
      Map<String, SweepResult> fresh = store.sweeps().results(missing.keySet());
      results.putAll(fresh);
      missing.keySet().removeAll(fresh.keySet());
      progress = progress(read, reused, results, begun);
      watcher.seen(progress);
    }
    return new Swept(read.sweep(), results, progress);
  }

  private static Progress progress(
      SweepReading.Read read, int reused, Map<String, SweepResult> results, long begun) {
    int faults = (int) results.values().stream().filter(result -> !result.isDone()).count();
    return new Progress(
        read.tasks().size(),
        reused,
        results.size() - reused,
        faults,
        Duration.ofNanos(System.nanoTime() - begun));
  }

  private void keepProblems(SweepReading.Read read, Map<String, SweepTask> missing)
      throws StoreTrouble {
    Set<String> wanted = new LinkedHashSet<>();
    for (SweepTask task : missing.values()) {
      wanted.add(task.problem());
      if (task.replaying().isAsked()) {
        wanted.add(task.luck());
      }
    }
    for (String problem : wanted) {
      store.sweeps().keepProblem(problem, read.text(problem), Instant.now());
    }
  }

  private void queue(SchedulerClient client, Map<String, SweepTask> missing) {
    Instant now = Instant.now();
    List<TaskInstance<String>> waiting = new ArrayList<>();
    missing.forEach((key, task) -> waiting.add(new TaskInstance<>(Queue.TASK, key, task.text())));
    waiting.forEach(instance -> client.scheduleIfNotExists(instance, now));
  }
}
