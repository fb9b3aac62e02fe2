package pressweek.app.store;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * The database under the books. Reading and writing go through here, so that every report of the
 * database becomes a {@link StoreTrouble}, and what one thread does together is one transaction.
 */
abstract sealed class Database implements AutoCloseable permits Sqlite, Postgres {
  private static final int MOST_TRIES = 5;

  /** A part of a transaction. */
  interface Step<T> {
    T on(Handle handle) throws StoreTrouble;
  }

  private final ThreadLocal<Optional<Handle>> joined = ThreadLocal.withInitial(Optional::empty);

  /** For words about it. */
  abstract Troubles troubles();

  abstract Jdbi readers();

  abstract Jdbi writers();

  /** Connections that write, for a library with tables of its own. */
  abstract DataSource source();

  abstract void begin(Handle handle);

  abstract void commit(Handle handle);

  abstract void rollBack(Handle handle);

  abstract void backUp(Path file) throws StoreTrouble;

  @Override
  public abstract void close();

  /** Reads what is committed; within a transaction of this thread, what that one sees. */
  final <T> T read(Step<T> step) throws StoreTrouble {
    Optional<Handle> own = joined.get();
    if (own.isPresent()) {
      return step.on(own.get());
    }
    try (Handle handle = readers().open()) {
      return step.on(handle);
    } catch (RuntimeException e) {
      throw troubles().of(e);
    }
  }

  /** Writes in one transaction, or in the one which this thread has open. */
  final <T> T write(Step<T> step) throws StoreTrouble {
    return write(step, result -> true);
  }

  /**
   * As {@link #write(Step)}, undoing all of it when the result is not one to keep. A step is run
   * again when two writers got in each other's way.
   */
  final <T> T write(Step<T> step, Predicate<T> keep) throws StoreTrouble {
    Optional<Handle> own = joined.get();
    if (own.isPresent()) {
      return step.on(own.get());
    }
    for (int tries = 1; ; tries++) {
      try {
        return inTransaction(step, keep);
      } catch (RuntimeException e) {
        if (tries == MOST_TRIES || !Troubles.passes(e)) {
          throw troubles().of(e);
        }
      }
    }
  }

  private <T> T inTransaction(Step<T> step, Predicate<T> keep) throws StoreTrouble {
    try (Handle handle = writers().open()) {
      begin(handle);
      boolean kept = false;
      joined.set(Optional.of(handle));
      try {
        T result = step.on(handle);
        if (keep.test(result)) {
          commit(handle);
          kept = true;
        }
        return result;
      } finally {
        joined.remove();
        if (!kept) {
          rollBack(handle);
        }
      }
    }
  }
}
