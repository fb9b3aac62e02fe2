package pressweek.app.store.row;

import java.time.Instant;

/**
 * What became of a change that names the version it starts from.
 *
 * @param <T> what is there after the change
 */
public sealed interface Answer<T> {
  /**
   * The change was made and is on the disk.
   *
   * @param value what is there now
   */
  record Done<T>(T value) implements Answer<T> {}

  /**
   * Somebody was faster: nothing was changed.
   *
   * @param version the version that is there now
   * @param what what the last change did, in words
   * @param by who made it
   * @param at when
   */
  record Stale<T>(long version, String what, String by, Instant at) implements Answer<T> {}

  /** There was nothing that could be changed, such as nothing to undo. */
  record Nothing<T>() implements Answer<T> {}
}
