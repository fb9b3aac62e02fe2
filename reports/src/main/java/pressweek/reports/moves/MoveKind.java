package pressweek.reports.moves;

import java.util.Locale;

/** What became of a run or an order line of the earlier plan, or that it is new. */
public enum MoveKind {
  /** On another press, or earlier or later by more than the tolerance. */
  MOVED,
  /** A line that the earlier plan did not know, or had no run of. */
  NEW,
  /** A line that was in the earlier plan, or came since, and has no place. */
  UNPLACED,
  /** The floor says that it has ended. */
  FINISHED,
  /** It is no longer wanted. */
  DROPPED;

  /** The word in a list. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
