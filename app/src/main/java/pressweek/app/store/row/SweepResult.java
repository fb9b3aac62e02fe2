package pressweek.app.store.row;

import java.time.Instant;

/**
 * What came of a task of a sweep.
 *
 * @param task SHA-256 of all that the result depends on, hexadecimal
 * @param body figures of the plan as JSON; empty where there is a fault
 * @param fault why there is none; empty where it was done
 * @param tookMillis milliseconds that it took
 * @param by who did it
 * @param at when
 */
public record SweepResult(
    String task, String body, String fault, long tookMillis, String by, Instant at) {
  /** True when there are figures. */
  public boolean isDone() {
    return fault.isEmpty();
  }
}
