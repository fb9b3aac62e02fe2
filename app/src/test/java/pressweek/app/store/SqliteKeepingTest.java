package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static pressweek.app.store.Given.done;
import static pressweek.app.store.Given.state;

import java.nio.file.Path;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteKeepingTest extends KeepingTest {
  @TempDir Path folder;

  @Override
  String newTarget() {
    return folder.resolve("week.db").toString();
  }

  @Override
  DataSource source(String target) {
    return SqliteSettings.usual().source("jdbc:sqlite:" + target);
  }

  @Override
  Schema.Dialect dialect() {
    return Schema.Dialect.SQLITE;
  }

  @Test
  void historyCannotBeReplaced() throws Exception {
    String target = newTarget();
    try (Store store = Store.open(target)) {
      done(store.deskStates().put(state("solved"), 0));
      refuses(
          target,
          "INSERT OR REPLACE INTO history (id, made_by, made_at, what, why, about)"
              + " VALUES (1, 'Bert', 1, '', '', '')");
      assertThat(store.history().latest(10).get(0).change().by()).isEqualTo("Anna");
    }
  }

  @Test
  void aCopyIsKeptBeforeAnUpgrade() throws Exception {
    Path target = Path.of(newTarget());
    new Schema(source(target.toString()), dialect(), new Troubles("old"), "1.1")
        .bringUp(version -> {});
    Store.open(target.toString()).close();
    Store.open(target.toString()).close();
    assertThat(folder.resolve("week.db.schema-1.1")).exists();
    assertThat(folder.resolve("week.db.schema-1.1-2")).doesNotExist();
    SqliteFile.at(folder.resolve("week.db.schema-1.1")).checkThoroughly();
  }
}
