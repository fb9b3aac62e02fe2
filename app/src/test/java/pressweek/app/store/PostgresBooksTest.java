package pressweek.app.store;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;

@Tag("full")
class PostgresBooksTest extends BooksTest {
  private static PostgresServer server;

  @BeforeAll
  static void start() {
    server = PostgresServer.start();
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @Override
  String newTarget() {
    return server.newDatabase();
  }
}
