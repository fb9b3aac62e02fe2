package pressweek.app.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;

/**
 * The folder into which the driver unpacks SQLite's own library. The driver does so anew in each
 * process and leaves the file (about 1 MB) behind when the process is killed.
 */
final class SqliteLibrary {
  private static final String PROPERTY = "org.sqlite.tmpdir";
  private static final String FOLDER = ".pressweek-sqlite";

  /** A library younger than this may be one that another process is about to load. */
  private static final Duration ABOUT_TO_BE_LOADED = Duration.ofMinutes(10);

  private SqliteLibrary() {}

  /** Has the library unpacked in a folder beside the store, unless a place was named already. */
  static void keepIn(Path folder) throws IOException {
    if (System.getProperty(PROPERTY) != null) {
      return;
    }
    Path own = folder.resolve(FOLDER);
    Files.createDirectories(own);
    sweep(own);
    System.setProperty(PROPERTY, own.toString());
  }

  /**
   * Deletes what killed processes left. A process that still runs keeps its library: where a file
   * in use can be deleted it stays readable until it is let go, elsewhere it is not deleted.
   */
  static void sweep(Path own) throws IOException {
    Path probe = Files.createTempFile(own, "age", ".tmp");
    Instant present = Files.getLastModifiedTime(probe).toInstant();
    Files.delete(probe);
    try (DirectoryStream<Path> libraries = Files.newDirectoryStream(own, "sqlite-*")) {
      for (Path library : libraries) {
        Instant made = Files.getLastModifiedTime(library).toInstant();
        if (made.isBefore(present.minus(ABOUT_TO_BE_LOADED))) {
          deleteIfFree(library);
        }
      }
    }
  }

  private static boolean deleteIfFree(Path library) {
    try {
      return Files.deleteIfExists(library);
    } catch (IOException e) {
      return false;
    }
  }
}
