package pressweek.app.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.sweep.Worker;

/** {@code pressweek work}: takes part in the sweeps of a shared store. */
@Command(
    name = "work",
    description = {
      "Takes tasks of sweeps from a database of PostgreSQL, plans them and keeps their figures there, until Ctrl-C. It needs no plant's folder. Start as many on as many machines as you like; what one that dies had begun is taken over by another.",
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {"0:it was ended", "2:bad arguments, or the store cannot be used"})
final class WorkCommand implements Callable<Integer> {
  private static final int LOOK_MS = 200;

  @Spec private CommandSpec spec;
  @Mixin private WorkOptions work;

  @Option(
      names = "--store",
      paramLabel = "URL",
      required = true,
      description = "the database, as jdbc:postgresql://host/name?user=...")
  private String store = "";

  @Option(
      names = "--stop-when-idle",
      paramLabel = "SECONDS",
      defaultValue = "0",
      description = "end after so long without a task (default: never)")
  private int idleSeconds;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    Worker.Settings settings = work.settings(spec, 1);
    if (idleSeconds < 0) {
      throw new ParameterException(spec.commandLine(), "--stop-when-idle must not be negative");
    }
    if (!store.startsWith("jdbc:postgresql:")) {
      throw new ParameterException(
          spec.commandLine(),
          "--store is no address that several machines can share; expected one that begins with jdbc:postgresql:");
    }
    try (Store opened = Store.open(store)) {
      return work(opened, settings);
    } catch (StoreTrouble e) {
      err.println(e.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }

  private int work(Store opened, Worker.Settings settings) throws InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    CountDownLatch stop = new CountDownLatch(1);
    Interrupt interrupt = new Interrupt(stop::countDown);
    Runtime.getRuntime().addShutdownHook(interrupt);
    try (Worker worker = new Worker(opened, settings)) {
      worker.start();
      err.println(settings.name() + " works; Ctrl-C ends it");
      err.flush();
      untilIdle(worker, stop);
      spec.commandLine().getOut().println(Counts.of(worker.done(), "task") + " done");
      spec.commandLine().getOut().flush();
    } finally {
      interrupt.finished(ExitCode.DONE);
    }
    return ExitCode.DONE;
  }

  private void untilIdle(Worker worker, CountDownLatch stop) throws InterruptedException {
    int seen = 0;
    long since = System.nanoTime();
    while (!stop.await(LOOK_MS, TimeUnit.MILLISECONDS)) {
      if (worker.isBusy() || worker.done() != seen) {
        seen = worker.done();
        since = System.nanoTime();
      }
      boolean idle = System.nanoTime() - since > TimeUnit.SECONDS.toNanos(idleSeconds);
      if (idleSeconds > 0 && idle) {
        return;
      }
    }
  }
}
