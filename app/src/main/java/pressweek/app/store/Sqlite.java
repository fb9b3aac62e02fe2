package pressweek.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteDataSource;

/**
 * Books in one SQLite file. One connection writes, each transaction taking the lock when it begins;
 * several connections read meanwhile.
 */
final class Sqlite extends Database {
  private static final int READERS = 4;

  private final SqliteFile file;
  private final HikariDataSource writer;
  private final HikariDataSource readers;
  private final Jdbi writing;
  private final Jdbi reading;

  private Sqlite(SqliteFile file, HikariDataSource writer, HikariDataSource readers) {
    this.file = file;
    this.writer = writer;
    this.readers = readers;
    this.writing = Jdbi.create(writer);
    this.reading = Jdbi.create(readers);
  }

  /** Opens the file, or makes it with the folders above it. */
  static Sqlite open(Path path, SqliteSettings settings) throws StoreTrouble {
    SqliteFile file = SqliteFile.at(path.toAbsolutePath().normalize());
    prepareFolder(file);
    boolean made = file.isNew();
    if (!made) {
      file.check();
    }
    SQLiteDataSource source = settings.source(file.url());
    new Schema(source, Schema.Dialect.SQLITE, file.troubles())
        .bringUp(version -> SqliteCopies.keepBefore(file, version));
    HikariDataSource writer = pool("writer", 1, source, file.troubles());
    try {
      return new Sqlite(file, writer, pool("readers", READERS, source, file.troubles()));
    } catch (StoreTrouble e) {
      writer.close();
      throw e;
    }
  }

  private static void prepareFolder(SqliteFile file) throws StoreTrouble {
    Path folder = file.path().getParent();
    if (folder == null) {
      throw file.troubles().notAStore("it is no file in a folder");
    }
    try {
      Files.createDirectories(folder);
      SqliteLibrary.keepIn(folder);
    } catch (IOException e) {
      throw file.troubles().of(e);
    }
  }

  private static HikariDataSource pool(
      String name, int most, SQLiteDataSource source, Troubles troubles) throws StoreTrouble {
    HikariConfig config = Pools.settings(name, most);
    config.setDataSource(source);
    config.setMaxLifetime(0);
    config.setConnectionInitSql("PRAGMA query_only = " + (most > 1));
    return Pools.open(config, troubles);
  }

  /** Where the file is. */
  Path path() {
    return file.path();
  }

  @Override
  Troubles troubles() {
    return file.troubles();
  }

  @Override
  Jdbi readers() {
    return reading;
  }

  @Override
  Jdbi writers() {
    return writing;
  }

  @Override
  DataSource source() {
    return writer;
  }

  @Override
  void begin(Handle handle) {
    handle.execute("BEGIN IMMEDIATE");
  }

  @Override
  void commit(Handle handle) {
    handle.execute("COMMIT");
  }

  /** SQLite has rolled back by itself after some faults; the connection is not used again then. */
  @Override
  void rollBack(Handle handle) {
    try {
      handle.execute("ROLLBACK");
    } catch (JdbiException e) {
      writer.evictConnection(handle.getConnection());
    }
  }

  @Override
  void backUp(Path target) throws StoreTrouble {
    SqliteCopies.backUp(file, target);
  }

  /** The writer last: the last one that closes the file takes its log in. */
  @Override
  public void close() {
    readers.close();
    writer.close();
  }
}
