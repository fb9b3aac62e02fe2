package pressweek.app.sweep;

/**
 * How often the plans of a sweep are replayed under uncertain times.
 *
 * @param count replays of each plan; 0 for none
 * @param seed seed of the luck, the same for all plans
 */
public record Replaying(int count, long seed) {
  /** No replays. */
  public static final Replaying NONE = new Replaying(0, 1);

  /** True when there are replays. */
  public boolean isAsked() {
    return count > 0;
  }
}
