package pressweek.app.store;

import static pressweek.app.store.StoreTrouble.Kind.NOT_DONE;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;

/** Copies of an SQLite store: made while it is in use, and put back in its place. */
final class SqliteCopies {
  /** What SQLite keeps beside a file while it is open. */
  private static final List<String> BESIDE = List.of("-wal", "-shm");

  private SqliteCopies() {}

  /**
   * Writes a copy of the store as it is at one moment, whoever writes meanwhile. It appears under
   * its name only when it is whole and on the disk.
   */
  static void backUp(SqliteFile store, Path target) throws StoreTrouble {
    Path whole = target.toAbsolutePath().normalize();
    refuseToOverwrite(whole);
    Path part = beside(whole, ".part");
    SqliteFile copy = SqliteFile.at(part);
    try {
      Files.createDirectories(folder(whole));
      Files.deleteIfExists(part);
      vacuumInto(store, copy);
      copy.checkThoroughly();
      force(part);
      refuseToOverwrite(whole);
      Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE);
      forceFolder(whole);
    } catch (IOException e) {
      throw new Troubles(whole.toString()).of(e);
    } finally {
      deleteQuietly(part);
    }
  }

  /** Keeps a copy beside the store before its schema is upgraded. */
  static void keepBefore(SqliteFile store, String version) throws StoreTrouble {
    backUp(store, free(store.path(), ".schema-" + version));
  }

  /**
   * Puts a back-up in the store's place. The back-up is checked first and stays where it is.
   *
   * @return where the replaced file is kept; empty if there was none
   */
  static Optional<Path> restore(Path backUp, Path target) throws StoreTrouble {
    SqliteFile source = SqliteFile.at(backUp.toAbsolutePath().normalize());
    Path store = target.toAbsolutePath().normalize();
    Path part = beside(store, ".part");
    try {
      Files.createDirectories(folder(store));
      SqliteLibrary.keepIn(folder(store));
      source.checkThoroughly();
      source.checkIsStore();
      Files.deleteIfExists(part);
      vacuumInto(source, SqliteFile.at(part));
      force(part);
      refuseIfOpen(SqliteFile.at(store));
      Optional<Path> aside = setAside(store);
      Files.move(part, store, StandardCopyOption.ATOMIC_MOVE);
      forceFolder(store);
      return aside;
    } catch (IOException e) {
      throw new Troubles(store.toString()).of(e);
    } finally {
      deleteQuietly(part);
    }
  }

  private static void refuseToOverwrite(Path target) throws StoreTrouble {
    if (Files.exists(target)) {
      throw new StoreTrouble(
          NOT_DONE,
          target + " exists already",
          "Name a new file for the back-up, or move that one");
    }
  }

  /** A trouble while copying is the copy's: the disk that is full is the one it goes to. */
  private static void vacuumInto(SqliteFile from, SqliteFile copy) throws StoreTrouble {
    try (Connection connection = from.connect();
        PreparedStatement statement = connection.prepareStatement("VACUUM INTO ?")) {
      statement.setString(1, copy.path().toString());
      statement.execute();
    } catch (SQLException e) {
      throw copy.troubles().of(e);
    }
  }

  /**
   * A file that is open elsewhere must not be replaced: its program would go on writing the old
   * one. Leaving write-ahead mode needs the file for oneself alone; a damaged file may fail
   * otherwise.
   */
  private static void refuseIfOpen(SqliteFile store) throws StoreTrouble {
    if (store.isNew()) {
      return;
    }
    try (Connection connection = store.connect();
        Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA busy_timeout = 1000");
      statement.execute("PRAGMA journal_mode = DELETE");
    } catch (SQLException e) {
      StoreTrouble trouble = store.troubles().of(e);
      if (trouble.kind() == StoreTrouble.Kind.LOCKED) {
        throw trouble;
      }
    }
  }

  private static Optional<Path> setAside(Path store) throws IOException {
    if (Files.notExists(store)) {
      return Optional.empty();
    }
    Path aside = free(store, ".replaced");
    Files.move(store, aside, StandardCopyOption.ATOMIC_MOVE);
    for (String end : BESIDE) {
      Path log = beside(store, end);
      if (Files.exists(log)) {
        Files.move(log, beside(aside, end), StandardCopyOption.ATOMIC_MOVE);
      }
    }
    return Optional.of(aside);
  }

  private static Path free(Path file, String end) {
    Path path = beside(file, end);
    for (int i = 2; Files.exists(path); i++) {
      path = beside(file, end + "-" + i);
    }
    return path;
  }

  private static Path beside(Path file, String end) {
    return file.resolveSibling(file.getFileName() + end);
  }

  private static Path folder(Path file) {
    Path folder = file.getParent();
    return folder == null ? file : folder;
  }

  private static void force(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** Where a folder can be opened, its new name is on the disk afterwards; on Windows it cannot. */
  private static void forceFolder(Path file) throws IOException {
    if (!System.getProperty("os.name", "").startsWith("Windows")) {
      try (FileChannel channel = FileChannel.open(folder(file), StandardOpenOption.READ)) {
        channel.force(true);
      }
    }
  }

  private static void deleteQuietly(Path part) {
    for (String end : List.of("", "-wal", "-shm", "-journal")) {
      try {
        Files.deleteIfExists(beside(part, end));
      } catch (IOException e) {
        part.toFile().deleteOnExit();
      }
    }
  }
}
