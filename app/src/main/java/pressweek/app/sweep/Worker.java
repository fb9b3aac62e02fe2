package pressweek.app.sweep;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.SchedulerName;
import com.github.kagkarlsson.scheduler.task.FailureHandler;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.Sweeps;
import pressweek.app.store.row.SweepResult;
import pressweek.data.files.InputError;
import pressweek.data.files.LuckFile;
import pressweek.data.files.ProblemFile;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Uncertainty;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;
import pressweek.solver.stress.Stress;

/**
 * Takes tasks of sweeps from a store, plans them and keeps what came of them. Any number of workers
 * may share a database of PostgreSQL; what a worker that died had begun is taken over by another.
 */
public final class Worker implements AutoCloseable {
  private static final Duration POLLING = Duration.ofMillis(250);
  private static final Duration RETRY = Duration.ofSeconds(5);
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  /** Heartbeats that a worker may miss before it counts as dead. */
  private static final int MISSED_HEARTBEATS = 4;

  private final Store store;
  private final Settings settings;
  private final Scheduler scheduler;
  private final Set<Runnable> endings = ConcurrentHashMap.newKeySet();
  private final Map<String, Problem> problems = new ConcurrentHashMap<>();
  private final AtomicInteger done = new AtomicInteger();
  private volatile boolean stopped;

  /**
   * How a worker works.
   *
   * @param name what it is called in the store
   * @param threads plans made side by side
   * @param heartbeat how often it says that it is alive; after four that are missing its task is
   *     another's
   */
  public record Settings(String name, int threads, Duration heartbeat) {}

  /** A worker that has not begun. */
  public Worker(Store store, Settings settings) {
    this.store = store;
    this.settings = settings;
    scheduler = scheduler();
  }

  private static OneTimeTask<String> task(Worker worker) {
    return Tasks.oneTime(Queue.TASK, String.class)
        .onFailure(new FailureHandler.OnFailureRetryLater<>(RETRY))
        .execute((instance, context) -> worker.work(SweepTask.of(instance.getData())));
  }

  private Scheduler scheduler() {
    var builder =
        Scheduler.create(store.queue(), task(this))
            .tableName(Sweeps.QUEUE)
            .serializer(Queue.TEXT)
            .jdbcCustomization(Queue.customization(store))
            .schedulerName(new SchedulerName.Fixed(settings.name()))
            .threads(settings.threads())
            .pollingInterval(POLLING)
            .heartbeatInterval(settings.heartbeat())
            .missedHeartbeatsLimit(MISSED_HEARTBEATS)
            .shutdownMaxWait(PATIENCE);
    return store.isShared() ? builder.pollUsingLockAndFetch(0.5, 2.0).build() : builder.build();
  }

  /** Begins to take tasks. */
  public void start() {
    scheduler.start();
  }

  /** Tasks that this worker has finished, with a result or a fault. */
  public int done() {
    return done.get();
  }

  /** True while it plans. */
  public boolean isBusy() {
    return !endings.isEmpty();
  }

  /** Ends soon; what it has begun is given back to the queue. */
  @Override
  public void close() {
    stopped = true;
    endings.forEach(Runnable::run);
    scheduler.stop();
  }

  private void work(SweepTask task) {
    try {
      Map<String, SweepResult> there = store.sweeps().results(List.of(task.key()));
      if (there.values().stream().noneMatch(SweepResult::isDone)) {
        long begun = System.nanoTime();
        Outcome outcome = outcome(task);
        long took = (System.nanoTime() - begun) / 1_000_000;
        store
            .sweeps()
            .keep(
                new SweepResult(
                    task.key(),
                    outcome.body(),
                    outcome.fault(),
                    took,
                    settings.name(),
                    Instant.now()));
      }
      done.incrementAndGet();
    } catch (StoreTrouble e) {
      throw new IllegalStateException("the store has trouble; the task is tried again", e);
    }
  }

  /** What came of a task: figures, or why there are none. */
  private record Outcome(String body, String fault) {}

  private Outcome outcome(SweepTask task) throws StoreTrouble {
    Optional<Problem> problem = problem(task.problem());
    Optional<Uncertainty> luck = luck(task);
    Outcome outcome =
        problem.isEmpty() || luck.isEmpty()
            ? new Outcome("", "its problem is not in the store, or of another version")
            : planned(problem.get(), luck.get(), task);
    if (stopped) {
      throw new IllegalStateException("stopped amid a task, which is begun again");
    }
    return outcome;
  }

  /** A fault of the program in one task must not hold up the others, nor be tried for ever. */
  private Outcome planned(Problem problem, Uncertainty luck, SweepTask task) {
    Planner planner = new Planner(problem);
    Replaying replaying = task.replaying();
    Stress stress =
        new Stress(luck, new Stress.Asked(Math.max(1, replaying.count()), replaying.seed(), 1));
    Runnable ending =
        () -> {
          planner.stop();
          stress.stop();
        };
    endings.add(ending);
    try {
      if (stopped) {
        ending.run();
      }
      Head head = new Head("sweep", "", 0, Map.of(), task.settings(), List.of(), false);
      Plan plan = planner.plan(head, Optional.empty(), Watcher.NONE);
      List<Finding> findings = Audit.check(problem, plan);
      return new Outcome(
          replaying.isAsked()
              ? SweepFigures.text(plan, findings, replaying, stress.replayed(plan))
              : SweepFigures.text(plan, findings),
          "");
    } catch (RuntimeException e) {
      return new Outcome("", "a bug: " + e);
    } finally {
      endings.remove(ending);
    }
  }

  /** Under what a task is replayed: nothing without replays; empty where the store lacks it. */
  private Optional<Uncertainty> luck(SweepTask task) throws StoreTrouble {
    if (!task.replaying().isAsked()) {
      return Optional.of(Uncertainty.NONE);
    }
    return store
        .sweeps()
        .problem(task.luck())
        .flatMap(text -> LuckFile.read("luck " + task.luck(), text).luck());
  }

  /** One problem is kept at hand: tasks come scenario by scenario. */
  private Optional<Problem> problem(String sha256) throws StoreTrouble {
    Problem known = problems.get(sha256);
    if (known != null) {
      return Optional.of(known);
    }
    Optional<String> text = store.sweeps().problem(sha256);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    ProblemFile.Reading reading = ProblemFile.read("problem " + sha256, text.get());
    List<InputError> errors = reading.errors();
    if (errors.isEmpty()) {
      problems.clear();
      problems.put(sha256, reading.problem().orElseThrow());
    }
    return reading.problem();
  }

  /** Puts tasks into the queue of a store; those that are there already stay as they are. */
  static SchedulerClient client(Store store) {
    return SchedulerClient.Builder.create(store.queue())
        .tableName(Sweeps.QUEUE)
        .serializer(Queue.TEXT)
        .jdbcCustomization(Queue.customization(store))
        .build();
  }
}
