package pressweek.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import org.sqlite.SQLiteConfig;

/**
 * An SQLite file as a file: whether it is one, and whether it is whole.
 *
 * @param path where it is
 * @param troubles for words about it
 */
record SqliteFile(Path path, Troubles troubles) {
  /** How every SQLite file begins (sqlite.org/fileformat.html, 1.3.1). */
  private static final byte[] BEGINNING = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

  private static final int WAIT_MS = 10_000;

  static SqliteFile at(Path path) {
    return new SqliteFile(path, new Troubles(path.toString()));
  }

  /** Whether there is nothing yet, not even a byte. */
  boolean isNew() throws StoreTrouble {
    try {
      return Files.notExists(path) || (Files.isRegularFile(path) && Files.size(path) == 0);
    } catch (IOException e) {
      throw troubles.of(e);
    }
  }

  /** Refuses a file that is not SQLite's or whose pages do not fit together. */
  void check() throws StoreTrouble {
    check("quick_check");
  }

  /** As {@link #check()}, and compares every index with its table. */
  void checkThoroughly() throws StoreTrouble {
    check("integrity_check");
  }

  private void check(String pragma) throws StoreTrouble {
    checkBeginning();
    try (Connection connection = connect();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery("PRAGMA " + pragma + "(1)")) {
      String first = found.next() ? found.getString(1) : "no answer";
      if (!first.equals("ok")) {
        throw troubles.damaged(first.lines().reduce((a, b) -> b).orElse(first));
      }
    } catch (SQLException e) {
      throw troubles.of(e);
    }
  }

  private void checkBeginning() throws StoreTrouble {
    if (!Files.isRegularFile(path)) {
      throw new StoreTrouble(
          StoreTrouble.Kind.UNREACHABLE,
          path + (Files.exists(path) ? " is not a file" : " does not exist"),
          "Name the file of a store");
    }
    try (InputStream in = Files.newInputStream(path)) {
      if (!Arrays.equals(in.readNBytes(BEGINNING.length), BEGINNING)) {
        throw troubles.notAStore("it does not begin like an SQLite file");
      }
    } catch (IOException e) {
      throw troubles.of(e);
    }
  }

  /** Refuses a whole SQLite file which holds something else. */
  void checkIsStore() throws StoreTrouble {
    String sql =
        "SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name IN ('desk', '"
            + Schema.STEPS
            + "')";
    try (Connection connection = connect();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      if (!found.next() || found.getInt(1) != 2) {
        throw troubles.notAStore("its tables are not ours");
      }
    } catch (SQLException e) {
      throw troubles.of(e);
    }
  }

  /** A connection of its own, outside the pools. */
  Connection connect() throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(WAIT_MS);
    return config.createConnection(url());
  }

  String url() {
    return "jdbc:sqlite:" + path;
  }
}
