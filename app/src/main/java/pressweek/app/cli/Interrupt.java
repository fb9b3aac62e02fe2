package pressweek.app.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Ctrl-C: ends the search, waits until the plan is written, and leaves with its exit code. */
final class Interrupt extends Thread {
  private final Runnable stop;
  private final CountDownLatch written = new CountDownLatch(1);
  private final AtomicInteger code = new AtomicInteger();

  /** Ends a search in this way. */
  Interrupt(Runnable stop) {
    this.stop = stop;
  }

  /** The plan is written; the process is to leave with this exit code. */
  void finished(int exitCode) {
    code.set(exitCode);
    written.countDown();
  }

  @Override
  public void run() {
    if (written.getCount() == 0) {
      return;
    }
    stop.run();
    try {
      if (written.await(60, TimeUnit.SECONDS)) {
        System.out.flush();
        Runtime.getRuntime().halt(code.get());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
