package pressweek.data.week;

import java.util.function.Function;

/**
 * A step on the way from an order line to a job: done, or stopped with the reason why the line
 * cannot be planned.
 *
 * @param <T> what the step gives
 */
sealed interface Attempt<T> {
  /** The step is done. */
  record Done<T>(T value) implements Attempt<T> {}

  /**
   * The line cannot be planned.
   *
   * @param reason why
   * @param cure what would cure it
   * @param column column of the order line whose value cannot be right; empty where it is not said
   *     to be one
   */
  record Stopped<T>(String reason, String cure, String column) implements Attempt<T> {
    Stopped(String reason, String cure) {
      this(reason, cure, "");
    }
  }

  /** The next step, if this one is done. */
  default <U> Attempt<U> then(Function<T, Attempt<U>> next) {
    if (this instanceof Done<T> done) {
      return next.apply(done.value());
    }
    Stopped<T> stopped = (Stopped<T>) this;
    return new Stopped<>(stopped.reason(), stopped.cure(), stopped.column());
  }
}
