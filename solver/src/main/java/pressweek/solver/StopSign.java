package pressweek.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * A sign that work of several searches should end soon, given from any thread: the search that goes
 * on ends with the best it has, and what would come after it does not begin.
 */
public final class StopSign {
  private final BooleanSupplier over;
  private final List<Runnable> ways = new ArrayList<>();
  private boolean given;

  /** A sign that only {@link #give} gives. */
  public StopSign() {
    this(() -> false);
  }

  /**
   * A sign that stands as well once something else says so, which is asked between two steps.
   *
   * @param over whether it is time to stop
   */
  public StopSign(BooleanSupplier over) {
    this.over = over;
  }

  /** Gives the sign. */
  public void give() {
    synchronized (ways) {
      given = true;
      ways.forEach(Runnable::run);
    }
  }

  /** Whether to stop. */
  public boolean isGiven() {
    synchronized (ways) {
      return given || over.getAsBoolean();
    }
  }

  /**
   * Does work that can be stopped.
   *
   * @param stop ends it soon, from any thread; called at once where the sign is given already
   * @param work the work
   */
  public <T> T heeding(Runnable stop, Supplier<T> work) {
    synchronized (ways) {
      ways.add(stop);
      if (given) {
        stop.run();
      }
    }
    try {
      return work.get();
    } finally {
      synchronized (ways) {
        ways.remove(stop);
      }
    }
  }
}
