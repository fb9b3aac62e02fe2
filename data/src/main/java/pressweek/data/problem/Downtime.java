package pressweek.data.problem;

/**
 * A press or a mold that is away.
 *
 * @param kind what is away
 * @param id press or mold
 * @param fromMin first minute away, since 1970 UTC
 * @param toMin first minute back
 * @param reason in words
 */
public record Downtime(Kind kind, String id, int fromMin, int toMin, String reason) {
  /** What can be away. */
  public enum Kind {
    PRESS,
    MOLD
  }
}
