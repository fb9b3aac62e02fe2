package pressweek.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jdbi.v3.core.statement.Update;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.Scenario;

/**
 * Scenarios by name. Each change names the version that it starts from; a new one starts from 0.
 */
public final class Scenarios {
  private final Database database;

  Scenarios(Database database) {
    this.database = database;
  }

  /** All scenarios by name. */
  public List<Scenario> all() throws StoreTrouble {
    return database.read(
        handle ->
            handle.createQuery("SELECT * FROM scenario").map(Scenarios::scenario).stream()
                .sorted(Comparator.comparing(Scenario::name))
                .toList());
  }

  /** The scenario with that name. */
  public Optional<Scenario> find(String name) throws StoreTrouble {
    return database.read(handle -> find(handle, name));
  }

  /** Writes the scenario anew; its version names the one that it starts from. */
  public Answer<Scenario> put(Scenario scenario) throws StoreTrouble {
    return database.write(
        handle -> {
          if (write(handle, scenario) == 0) {
            return missed(handle, scenario.name());
          }
          note(handle, "wrote scenario ", scenario.name(), scenario.made());
          return new Answer.Done<>(find(handle, scenario.name()).orElseThrow());
        });
  }

  /** Deletes the scenario if it still has that version, and answers with what it was. */
  public Answer<Scenario> delete(String name, long expectedVersion, Change change)
      throws StoreTrouble {
    return database.write(
        handle -> {
          Optional<Scenario> there = find(handle, name);
          String sql = "DELETE FROM scenario WHERE name = ? AND version = ?";
          if (there.isEmpty() || handle.execute(sql, name, expectedVersion) == 0) {
            return missed(handle, name);
          }
          note(handle, "deleted scenario ", name, change);
          return new Answer.Done<>(there.get());
        });
  }

  private static int write(Handle handle, Scenario scenario) {
    String sql =
        scenario.version() == 0
            ? """
              INSERT INTO scenario (name, version, body, why, made_by, made_at)
              VALUES (:name, :version + 1, :body, :why, :by, :at)
              ON CONFLICT (name) DO NOTHING
              """
            : """
              UPDATE scenario SET version = version + 1, body = :body, why = :why, made_by = :by,
                made_at = :at
              WHERE name = :name AND version = :version
              """;
    Update update = handle.createUpdate(sql);
    return update
        .bind("name", scenario.name())
        .bind("version", scenario.version())
        .bind("body", scenario.text())
        .bind("why", scenario.made().why())
        .bind("by", scenario.made().by())
        .bind("at", scenario.made().at().toEpochMilli())
        .execute();
  }

  private static Answer<Scenario> missed(Handle handle, String name) {
    return find(handle, name)
        .<Answer<Scenario>>map(
            there ->
                new Answer.Stale<>(
                    there.version(),
                    "wrote scenario " + name,
                    there.made().by(),
                    there.made().at()))
        .orElseGet(Answer.Nothing::new);
  }

  private static void note(Handle handle, String verb, String name, Change change) {
    History.write(handle, verb + name, "scenario " + name, change);
  }

  private static Optional<Scenario> find(Handle handle, String name) {
    return handle
        .createQuery("SELECT * FROM scenario WHERE name = :name")
        .bind("name", name)
        .map(Scenarios::scenario)
        .findOne();
  }

  private static Scenario scenario(ResultSet row, StatementContext context) throws SQLException {
    return new Scenario(
        row.getString("name"), row.getLong("version"), row.getString("body"), Rows.change(row));
  }
}
