package pressweek.solver.offer;

import java.util.OptionalInt;

/**
 * A line that pays for a new one with its own lateness.
 *
 * @param line {@code order/line}
 * @param dueMin when it is due, minutes since 1970 UTC
 * @param wasMin when it is ready without the new line
 * @param readyMin when it is ready with it; empty where it loses its place
 */
public record Later(String line, int dueMin, int wasMin, OptionalInt readyMin) {
  /** Minutes by which its lateness grows; empty where it loses its place. */
  public OptionalInt laterMin() {
    return readyMin.isPresent()
        ? OptionalInt.of(late(readyMin.getAsInt()) - late(wasMin))
        : OptionalInt.empty();
  }

  /** Whether it is on time without the new line. */
  public boolean wasOnTime() {
    return wasMin <= dueMin;
  }

  private int late(int ready) {
    return Math.max(0, ready - dueMin);
  }
}
