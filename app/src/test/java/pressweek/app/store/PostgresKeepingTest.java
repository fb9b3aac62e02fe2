package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.postgresql.ds.PGSimpleDataSource;

@Tag("full")
class PostgresKeepingTest extends KeepingTest {
  private static PostgresServer server;

  @TempDir Path folder;

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

  @Override
  DataSource source(String target) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setUrl(target);
    return source;
  }

  @Override
  Schema.Dialect dialect() {
    return Schema.Dialect.POSTGRESQL;
  }

  @Test
  void historyCannotBeEmptied() throws Exception {
    String target = newTarget();
    Store.open(target).close();
    refuses(target, "TRUNCATE history");
  }

  @Test
  void aDatabaseThatIsNotThereIsNamedWithoutItsPassword() {
    String target = newTarget().replaceFirst("/week\\d+", "/nowhere") + "&password=geheim";
    StoreTrouble trouble = catchThrowableOfType(StoreTrouble.class, () -> Store.open(target));
    assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.UNREACHABLE);
    assertThat(trouble)
        .hasMessageContaining("There is no database")
        .hasMessageContaining("/nowhere")
        .hasMessageNotContaining("geheim");
  }

  @Test
  void aServerThatIsNotThereIsNamed() {
    String target = "jdbc:postgresql://localhost:1/week?user=postgres";
    StoreTrouble trouble = catchThrowableOfType(StoreTrouble.class, () -> Store.open(target));
    assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.UNREACHABLE);
    assertThat(trouble).hasMessageContaining("does not answer");
  }

  @Test
  void aBackUpIsLeftToTheServersOwnPrograms() throws Exception {
    try (Store store = Store.open(newTarget())) {
      StoreTrouble trouble =
          catchThrowableOfType(
              StoreTrouble.class, () -> store.backUp(folder.resolve("back-up.db")));
      assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.NOT_DONE);
      assertThat(trouble).hasMessageContaining("pg_dump");
    }
  }
}
