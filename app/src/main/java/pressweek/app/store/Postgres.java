package pressweek.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/**
 * Books in a database of PostgreSQL. Who writes holds the row of the desk until the end, so that
 * one writes at a time as on SQLite, and two batches of ticks that meet never wait for each other;
 * readers wait for nobody.
 */
final class Postgres extends Database {
  private static final int CONNECTIONS = 10;

  private final Troubles troubles;
  private final HikariDataSource pool;
  private final Jdbi jdbi;

  private Postgres(Troubles troubles, HikariDataSource pool) {
    this.troubles = troubles;
    this.pool = pool;
    this.jdbi = Jdbi.create(pool);
  }

  /** Opens the database of a URL such as {@code jdbc:postgresql://host/name?user=...}. */
  static Postgres open(String url) throws StoreTrouble {
    Troubles troubles = new Troubles(withoutSecrets(url));
    HikariConfig config = Pools.settings("postgresql", CONNECTIONS);
    config.setJdbcUrl(url);
    config.setTransactionIsolation("TRANSACTION_READ_COMMITTED");
    config.setConnectionInitSql("SET lock_timeout = '30s'");
    config.addDataSourceProperty("ApplicationName", "pressweek");
    config.addDataSourceProperty("tcpKeepAlive", "true");
    HikariDataSource pool = Pools.open(config, troubles);
    try {
      // The server's administrators keep their own copies: none is made before an upgrade.
      new Schema(pool, Schema.Dialect.POSTGRESQL, troubles).bringUp(version -> {});
      return new Postgres(troubles, pool);
    } catch (StoreTrouble e) {
      pool.close();
      throw e;
    }
  }

  static String withoutSecrets(String url) {
    int query = url.indexOf('?');
    return query < 0 ? url : url.substring(0, query);
  }

  @Override
  Troubles troubles() {
    return troubles;
  }

  @Override
  Jdbi readers() {
    return jdbi;
  }

  @Override
  Jdbi writers() {
    return jdbi;
  }

  @Override
  DataSource source() {
    return pool;
  }

  @Override
  void begin(Handle handle) {
    handle.begin();
    handle.execute("SELECT version FROM desk FOR UPDATE");
  }

  @Override
  void commit(Handle handle) {
    handle.commit();
  }

  @Override
  void rollBack(Handle handle) {
    try {
      handle.rollback();
    } catch (JdbiException e) {
      pool.evictConnection(handle.getConnection());
    }
  }

  @Override
  void backUp(Path target) throws StoreTrouble {
    throw new StoreTrouble(
        StoreTrouble.Kind.NOT_DONE,
        troubles.store() + " is a database of PostgreSQL, which is backed up with its own programs",
        "Use pg_dump for a back-up and pg_restore to bring it back");
  }

  @Override
  public void close() {
    pool.close();
  }
}
