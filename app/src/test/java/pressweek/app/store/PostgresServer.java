package pressweek.app.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/** A server of PostgreSQL that the tests bring along, with a new database for each test. */
public final class PostgresServer implements AutoCloseable {
  private final EmbeddedPostgres server;
  private int databases;

  private PostgresServer(EmbeddedPostgres server) {
    this.server = server;
  }

  /** Starts it. */
  public static PostgresServer start() {
    try {
      return new PostgresServer(EmbeddedPostgres.start());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The URL of a database without tables. */
  public String newDatabase() {
    String name = "week" + ++databases;
    try (Connection connection = server.getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("CREATE DATABASE " + name);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    return server.getJdbcUrl("postgres", name);
  }

  @Override
  public void close() {
    try {
      server.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
