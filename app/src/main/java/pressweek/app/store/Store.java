package pressweek.app.store;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.sql.DataSource;
import pressweek.app.store.row.Answer;

/**
 * What Pressweek keeps between one day and the next. Each book has its own class; a change and its
 * line in the history are one transaction. Times are handed in and kept to the millisecond.
 */
public final class Store implements AutoCloseable {
  /**
   * Several changes that belong together.
   *
   * @param <T> what is there afterwards
   */
  public interface Changes<T> {
    /** Makes the changes through the books; may be run again when two writers met. */
    Answer<T> make() throws StoreTrouble;
  }

  private final Database database;

  private Store(Database database) {
    this.database = database;
  }

  /**
   * Opens a store, and makes it if it is not there.
   *
   * @param target path of an SQLite file, or a URL that begins with {@code jdbc:postgresql:}
   * @throws StoreTrouble with words for a person
   */
  public static Store open(String target) throws StoreTrouble {
    return open(target, SqliteSettings.usual());
  }

  /**
   * Opens a store that must be there.
   *
   * @throws StoreTrouble with words for a person, also when there is none
   */
  public static Store existing(String target) throws StoreTrouble {
    if (!target.startsWith("jdbc:") && !Files.isRegularFile(Path.of(target))) {
      throw new StoreTrouble(
          StoreTrouble.Kind.UNREACHABLE,
          "There is no file " + target,
          "Name the file that the pages were opened with");
    }
    return open(target);
  }

  static Store open(String target, SqliteSettings settings) throws StoreTrouble {
    if (target.startsWith("jdbc:postgresql:")) {
      return new Store(Postgres.open(target));
    }
    if (target.toLowerCase(Locale.ROOT).startsWith("jdbc:")) {
      throw new StoreTrouble(
          StoreTrouble.Kind.NOT_A_STORE,
          Postgres.withoutSecrets(target) + " is a kind of database that Pressweek does not know",
          "Name a file, or an address that begins with jdbc:postgresql:");
    }
    try {
      return new Store(Sqlite.open(Path.of(target), settings));
    } catch (InvalidPathException e) {
      throw new StoreTrouble(
          StoreTrouble.Kind.NOT_A_STORE,
          "\"" + target + "\" is no name for a file: " + e.getReason(),
          "Name a file, or an address that begins with jdbc:postgresql:",
          e);
    }
  }

  /**
   * Puts a back-up in the place of a store which nobody has open. The back-up is checked first and
   * stays where it is; the replaced file is kept.
   *
   * @return where the replaced file is kept; empty if there was none
   */
  public static Optional<Path> restore(Path backUp, Path store) throws StoreTrouble {
    return SqliteCopies.restore(backUp, store);
  }

  /**
   * Writes a copy of the store to one file while others go on reading and writing. An existing file
   * is not overwritten. A database of PostgreSQL has its own programs for that, as the trouble
   * says.
   */
  public void backUp(Path file) throws StoreTrouble {
    database.backUp(file);
  }

  /**
   * Makes several changes as one: all of them are kept if the answer is {@link Answer.Done}, else
   * none. What is read meanwhile in the same thread sees them.
   */
  public <T> Answer<T> together(Changes<T> changes) throws StoreTrouble {
    return database.write(handle -> changes.make(), answer -> answer instanceof Answer.Done<T>);
  }

  /** The states of the week on the desk. */
  public DeskStates deskStates() {
    return new DeskStates(database);
  }

  /** The plans given out to the floor. */
  public Plans plans() {
    return new Plans(database);
  }

  /** The ticks on pulls. */
  public Ticks ticks() {
    return new Ticks(database);
  }

  /** What the floor reported. */
  public FloorNotes floorNotes() {
    return new FloorNotes(database);
  }

  /** The scenarios. */
  public Scenarios scenarios() {
    return new Scenarios(database);
  }

  /** The people who may log in. */
  public Users users() {
    return new Users(database);
  }

  /** Who is logged in. */
  public Sessions sessions() {
    return new Sessions(database);
  }

  /** Logins that failed. */
  public FailedLogins failedLogins() {
    return new FailedLogins(database);
  }

  /** Who changed what, when and why. */
  public History history() {
    return new History(database);
  }

  /** Which contents of the input files were taken. */
  public FileMarks fileMarks() {
    return new FileMarks(database);
  }

  /** The problems and results of sweeps. */
  public Sweeps sweeps() {
    return new Sweeps(database);
  }

  /** Connections for the queue of sweeps, whose table {@link Sweeps#QUEUE} is db-scheduler's. */
  public DataSource queue() {
    return database.source();
  }

  /** The file that it is; empty for a database on a server. */
  public Optional<Path> file() {
    return database instanceof Sqlite sqlite ? Optional.of(sqlite.path()) : Optional.empty();
  }

  /** Whether several machines can work on it at once: true for PostgreSQL. */
  public boolean isShared() {
    return database instanceof Postgres;
  }

  @Override
  public void close() {
    database.close();
  }

  Database database() {
    return database;
  }
}
