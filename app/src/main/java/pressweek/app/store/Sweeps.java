package pressweek.app.store;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.statement.StatementContext;
import pressweek.app.store.row.SweepResult;

/**
 * What sweeps plan and what came of it. Both are kept by what they hold, so that the same work is
 * done once; who did it first is kept, since all come to the same.
 */
public final class Sweeps {
  /** The table of db-scheduler. */
  public static final String QUEUE = "sweep_queue";

  private static final int AT_ONCE = 500;

  private final Database database;

  Sweeps(Database database) {
    this.database = database;
  }

  /** Keeps the text of a problem, or of the luck that replays it, under its SHA-256. */
  public void keepProblem(String sha256, String text, Instant at) throws StoreTrouble {
    database.write(
        handle ->
            handle.execute(
                """
                INSERT INTO sweep_problem (sha256, body, made_at) VALUES (?, ?, ?)
                ON CONFLICT (sha256) DO NOTHING
                """,
                sha256,
                text.getBytes(StandardCharsets.UTF_8),
                at.toEpochMilli()));
  }

  /** The text that is kept under a SHA-256. */
  public Optional<String> problem(String sha256) throws StoreTrouble {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT body FROM sweep_problem WHERE sha256 = ?")
                .bind(0, sha256)
                .map((row, context) -> new String(row.getBytes("body"), StandardCharsets.UTF_8))
                .findOne());
  }

  /** Keeps a result in the place of a fault; a result that is there already stays. */
  public void keep(SweepResult result) throws StoreTrouble {
    database.write(
        handle ->
            handle
                .createUpdate(
                    """
                    INSERT INTO sweep_result (task, body, fault, took_ms, made_by, made_at)
                    VALUES (:task, :body, :fault, :took, :by, :at)
                    ON CONFLICT (task) DO UPDATE SET body = excluded.body, fault = excluded.fault,
                      took_ms = excluded.took_ms, made_by = excluded.made_by,
                      made_at = excluded.made_at
                    WHERE sweep_result.fault <> ''
                    """)
                .bind("task", result.task())
                .bind("body", result.body())
                .bind("fault", result.fault())
                .bind("took", result.tookMillis())
                .bind("by", result.by())
                .bind("at", result.at().toEpochMilli())
                .execute());
  }

  /** Forgets faults, so that their tasks can be tried again. */
  public void forgetFaults(Collection<String> tasks) throws StoreTrouble {
    database.write(
        handle -> {
          for (String task : tasks) {
            handle.execute("DELETE FROM sweep_result WHERE task = ? AND fault <> ''", task);
          }
          return tasks.size();
        });
  }

  /** The results that are there, by task. */
  public Map<String, SweepResult> results(Collection<String> tasks) throws StoreTrouble {
    List<String> all = List.copyOf(tasks);
    Map<String, SweepResult> found = new LinkedHashMap<>();
    for (int from = 0; from < all.size(); from += AT_ONCE) {
      List<String> some = all.subList(from, Math.min(all.size(), from + AT_ONCE));
      database
          .read(
              handle ->
                  handle
                      .createQuery("SELECT * FROM sweep_result WHERE task IN (<tasks>)")
                      .bindList("tasks", some)
                      .map(Sweeps::result)
                      .list())
          .forEach(result -> found.put(result.task(), result));
    }
    return found;
  }

  private static SweepResult result(ResultSet row, StatementContext context) throws SQLException {
    return new SweepResult(
        row.getString("task"),
        row.getString("body"),
        row.getString("fault"),
        row.getLong("took_ms"),
        row.getString("made_by"),
        Rows.instant(row, "made_at"));
  }
}
