package pressweek.solver;

/** Is told how a search goes on. Called from the search's own threads, one call at a time. */
@FunctionalInterface
public interface Watcher {
  /** A watcher that does not look. */
  Watcher NONE = progress -> {};

  /** A better plan has been found, or a second has passed. */
  void seen(Progress progress);
}
