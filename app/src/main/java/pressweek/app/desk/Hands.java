package pressweek.app.desk;

import java.util.Optional;
import java.util.function.Function;

/**
 * What edits and trials of the week work with, made once for a version. For use by several threads:
 * whoever tries a move waits for nobody, and whoever only looks at the week not even for it to be
 * made.
 */
final class Hands {
  private Held held = new Held(-1, Optional.empty());

  /** What is at hand, and of which version of the week. */
  private record Held(long version, Optional<Editing> editing) {}

  /** Does something with the week that stands. */
  <T> T on(Standing now, Function<Editing, T> work) {
    return work.apply(of(now));
  }

  private synchronized Editing of(Standing now) {
    if (held.version() != now.version() || held.editing().isEmpty()) {
      held = new Held(now.version(), Optional.of(new Editing(now.week())));
    }
    return held.editing().orElseThrow();
  }
}
