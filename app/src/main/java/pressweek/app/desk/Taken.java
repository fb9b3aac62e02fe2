package pressweek.app.desk;

import java.time.Instant;

/** What came of a change to the desk. */
public sealed interface Taken {
  /** It is done and kept. */
  record Done(Standing standing) implements Taken {}

  /** Somebody else was first. */
  record Stale(long version, String what, String by, Instant at) implements Taken {}

  /** It cannot be done; why, in a sentence. */
  record Refused(String why) implements Taken {}
}
