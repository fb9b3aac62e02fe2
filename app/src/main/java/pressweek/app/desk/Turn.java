package pressweek.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Whose turn it is to search: what takes all of the machine for a while is done one at a time, be
 * it a search of the week or a comparison of scenarios. For use by several threads.
 */
public final class Turn implements AutoCloseable {
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(Background.named("search"));
  private final List<Going> going = new ArrayList<>();

  /** What is searched for. */
  public enum Kind {
    /** A better week. */
    WEEK("solving the week", "on the week wall"),
    /** What scenarios would bring. */
    SCENARIOS("comparing scenarios", "on the page Scenarios");

    private final String words;
    private final String where;

    Kind(String words, String where) {
      this.words = words;
      this.where = where;
    }
  }

  /**
   * A search that goes on.
   *
   * @param kind what is searched for
   * @param by who asked for it
   * @param seconds how long it may take
   * @param stop ends it soon
   */
  public record Going(Kind kind, String by, int seconds, Runnable stop) {
    /** That it goes on, in a sentence for somebody who would like a turn. */
    public String words() {
      return "%s is %s already; stop that %s, or wait".formatted(by, kind.words, kind.where);
    }
  }

  /** The search that goes on; empty for none. */
  public synchronized Optional<Going> going() {
    return going.stream().findFirst();
  }

  /** The search of a kind that goes on; empty for none. */
  public Optional<Going> going(Kind kind) {
    return going().filter(g -> g.kind() == kind);
  }

  /**
   * Begins a search.
   *
   * @param work does it
   * @param told done once the turn is free again, also where the work failed
   * @return why not, in a sentence; empty when it has begun
   */
  synchronized Optional<String> begin(Going next, Runnable work, Runnable told) {
    if (!going.isEmpty()) {
      return Optional.of(going.get(0).words());
    }
    going.add(next);
    thread.execute(
        () -> {
          try {
            work.run();
          } finally {
            free();
            told.run();
          }
        });
    return Optional.empty();
  }

  /** Whether nobody gets a turn any more; whatever is still at it need not be kept. */
  public boolean isClosed() {
    return thread.isShutdown();
  }

  private synchronized void free() {
    going.clear();
  }

  @Override
  public void close() {
    thread.shutdown();
    going().ifPresent(g -> g.stop().run());
  }
}
