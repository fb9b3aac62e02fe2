package pressweek.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static pressweek.app.store.Given.ANNA;
import static pressweek.app.store.Given.BERT;
import static pressweek.app.store.Given.done;
import static pressweek.app.store.Given.state;
import static pressweek.app.store.Given.tick;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Body;
import pressweek.app.store.row.DeskState;
import pressweek.app.store.row.Entry;
import pressweek.app.store.row.Tick;

/** What must outlast other writers, meddling and other versions, whichever database is under it. */
abstract class KeepingTest {
  private static final int PUTS = 25;

  /** A database that has never been opened. */
  abstract String newTarget();

  /** The same database without the store. */
  abstract DataSource source(String target);

  abstract Schema.Dialect dialect();

  @Test
  void twoWritersAtOnceLoseNothing() throws Exception {
    String target = newTarget();
    try (Store anna = Store.open(target);
        Store bert = Store.open(target)) {
      List<Long> versions = new ArrayList<>();
      for (List<Long> own : atOnce(() -> putAll(anna, "A"), () -> putAll(bert, "B"))) {
        versions.addAll(own);
      }
      assertThat(versions)
          .containsExactlyInAnyOrderElementsOf(
              LongStream.rangeClosed(1, 2 * PUTS).boxed().toList());
      assertThat(anna.history().latest(1_000)).hasSize(2 * PUTS);
      int back = 0;
      long version = 2 * PUTS;
      while (anna.deskStates().undo(version, ANNA) instanceof Answer.Done<DeskState>) {
        version++;
        back++;
      }
      assertThat(back).as("each state has the one before as its parent").isEqualTo(2 * PUTS - 1);
    }
  }

  private static List<Long> putAll(Store store, String who) throws StoreTrouble {
    List<Long> versions = new ArrayList<>();
    while (versions.size() < PUTS) {
      long expected = store.deskStates().version();
      String what = who + versions.size();
      if (store.deskStates().put(state(what), expected) instanceof Answer.Done<DeskState> put) {
        versions.add(put.value().version());
        assertThat(put.value().what()).isEqualTo(what);
      }
    }
    return versions;
  }

  @Test
  void ticksThatMeetAreTakenOnce() throws Exception {
    String target = newTarget();
    List<Tick> ticks = IntStream.range(0, 300).mapToObj(i -> tick(i, "P" + i, i)).toList();
    List<Tick> backwards = new ArrayList<>(ticks);
    Collections.reverse(backwards);
    try (Store one = Store.open(target);
        Store other = Store.open(target)) {
      List<UUID> fresh = new ArrayList<>();
      for (List<UUID> own :
          atOnce(() -> one.ticks().add(ticks), () -> other.ticks().add(backwards))) {
        fresh.addAll(own);
      }
      assertThat(fresh).containsExactlyInAnyOrderElementsOf(ticks.stream().map(Tick::id).toList());
      assertThat(one.history().latest(1_000)).hasSize(ticks.size());
    }
  }

  private static <T> List<T> atOnce(Callable<T> one, Callable<T> other) throws Exception {
    ExecutorService both = Executors.newFixedThreadPool(2);
    try {
      List<T> results = new ArrayList<>();
      for (Future<T> result : both.invokeAll(List.of(one, other))) {
        results.add(result.get());
      }
      return results;
    } finally {
      both.shutdownNow();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UPDATE history SET why = 'another'",
        "UPDATE history SET made_by = 'Bert' WHERE id = 1",
        "DELETE FROM history",
        "DELETE FROM history WHERE id = 1"
      })
  void historyCannotBeChanged(String meddling) throws Exception {
    String target = newTarget();
    try (Store store = Store.open(target)) {
      done(store.deskStates().put(state("solved"), 0));
      List<Entry> before = store.history().latest(10);
      assertThat(before).hasSize(1);
      refuses(target, meddling);
      assertThat(store.history().latest(10)).isEqualTo(before);
    }
  }

  final void refuses(String target, String meddling) {
    assertThatThrownBy(() -> execute(target, meddling))
        .isInstanceOf(SQLException.class)
        .hasMessageContaining("history is never changed");
  }

  @Test
  void anOlderStoreIsUpgradedWithAllItHolds() throws Exception {
    String target = newTarget();
    fillFirstSchema(target);
    try (Store store = Store.open(target)) {
      DeskState old = store.deskStates().current().orElseThrow();
      assertThat(old.version()).isEqualTo(2);
      assertThat(old.body()).isEqualTo(Body.of("abc"));
      assertThat(old.undo()).contains("moved");
      assertThat(store.plans().latest().orElseThrow().body()).isEqualTo(Body.of("def"));
      assertThat(store.ticks().latest(10)).hasSize(1);
      assertThat(store.history().latest(10)).extracting(Entry::what).containsExactly("moved");
      refuses(target, "DELETE FROM history");
      assertThat(done(store.deskStates().undo(2, BERT)).body()).isEqualTo(Body.of("ab"));
      done(store.deskStates().put(state("held"), 3));
    }
    try (Store again = Store.open(target)) {
      assertThat(again.deskStates().current().orElseThrow().what()).isEqualTo("held");
    }
  }

  /** What the first schema held, in words of its own rather than through the books. */
  private void fillFirstSchema(String target) throws Exception {
    new Schema(source(target), dialect(), new Troubles(target), "1.1").bringUp(version -> {});
    String bytes = dialect() == Schema.Dialect.SQLITE ? "x'%s'" : "'\\x%s'";
    String state =
        "INSERT INTO week_state (parent, plan_number, body, what, why, made_by, made_at)"
            + " VALUES (%s, '2026-W49/1', "
            + bytes
            + ", '%s', '', 'Anna', 1)";
    execute(target, state.formatted("NULL", "6162", "solved"));
    execute(target, state.formatted("1", "616263", "moved"));
    execute(target, "UPDATE desk SET version = 2, state = 2, what = 'moved', made_by = 'Anna'");
    execute(
        target,
        "INSERT INTO given_plan (number, body, why, made_by, made_at) VALUES ('2026-W49/1', "
            + bytes.formatted("646566")
            + ", '', 'Anna', 1)");
    execute(
        target,
        "INSERT INTO tick (id, pull, plan_number, pieces, short_pieces, reason, made_by, at_client,"
            + " at_server) VALUES ('00000000-0000-0007-0000-000000000001', 'P1', '2026-W49/1', 300,"
            + " 0, '', 'Hana', 1, 2)");
    execute(
        target,
        "INSERT INTO history (made_by, made_at, what, why, about)"
            + " VALUES ('Anna', 1, 'moved', '', 'week')");
  }

  @Test
  void aNewerStoreIsLeftAlone() throws Exception {
    String target = newTarget();
    try (Store store = Store.open(target)) {
      done(store.deskStates().put(state("solved"), 0));
    }
    execute(
        target,
        "INSERT INTO schema_steps SELECT 99, '99', 'later', type, 'V99__later.sql', 1, installed_by,"
            + " installed_on, 0, success FROM schema_steps WHERE version = '2'");
    StoreTrouble trouble = catchThrowableOfType(StoreTrouble.class, () -> Store.open(target));
    assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.NEWER);
    assertThat(trouble)
        .hasMessageContaining("schema 99; this one knows 3")
        .hasMessageContaining("Open it with that version");
    execute(target, "DELETE FROM schema_steps WHERE version = '99'");
    try (Store store = Store.open(target)) {
      assertThat(store.deskStates().version()).isEqualTo(1);
    }
  }

  @Test
  void aDatabaseOfSomebodyElseIsLeftAlone() throws Exception {
    String target = newTarget();
    execute(target, "CREATE TABLE recipe (name TEXT)");
    StoreTrouble trouble = catchThrowableOfType(StoreTrouble.class, () -> Store.open(target));
    assertThat(trouble.kind()).isEqualTo(StoreTrouble.Kind.NOT_A_STORE);
    execute(target, "DROP TABLE recipe");
  }

  final void execute(String target, String sql) throws SQLException {
    try (Connection connection = source(target).getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
