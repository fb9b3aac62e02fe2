package pressweek.solver.why;

import java.util.Optional;
import pressweek.data.plan.Wait;

/**
 * A stretch of time of a press, from the start of the plan to the time when a line is ready.
 *
 * @param what what the press does
 * @param line line whose wait, change or run it is; of a dismount and of a press that stands empty
 *     the line that comes next
 * @param waited the wait, where it is one
 * @param fromMin from, minutes since 1970 UTC
 * @param toMin to
 * @param because what is behind it, in words: which run has the mold, which delivery came; may be
 *     empty
 */
public record Stretch(
    What what, String line, Optional<Wait> waited, int fromMin, int toMin, String because) {
  /** What a press does. */
  public enum What {
    WAIT("waits"),
    DISMOUNT("mold taken off"),
    CHANGE("change"),
    RUN("run"),
    AFTER("after molding"),
    EMPTY("nothing planned");

    private final String words;

    What(String words) {
      this.words = words;
    }

    /** As a person reads it. */
    public String words() {
      return words;
    }
  }

  /** How long it is, minutes. */
  public int minutes() {
    return toMin - fromMin;
  }
}
