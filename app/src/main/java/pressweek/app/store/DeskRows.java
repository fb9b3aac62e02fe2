package pressweek.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.DeskState;
import pressweek.app.store.row.NewState;

/** The rows of the desk and its states. */
final class DeskRows {
  /**
   * The row of the desk.
   *
   * @param version counts its changes
   * @param what what the last change did
   * @param by who made it
   * @param at when
   */
  record Desk(long version, String what, String by, Instant at) {}

  /**
   * A state to go to.
   *
   * @param id its number
   * @param what what is taken back or done again on the way there
   */
  record Place(long id, String what) {}

  private DeskRows() {}

  static Desk desk(Handle handle) {
    return handle
        .createQuery("SELECT version, what, made_by, made_at FROM desk")
        .map(
            (row, context) ->
                new Desk(
                    row.getLong("version"),
                    row.getString("what"),
                    row.getString("made_by"),
                    Rows.instant(row, "made_at")))
        .one();
  }

  /**
   * Raises the version if it is still the expected one. From here to the end of the transaction
   * nobody else can: the row is locked.
   */
  static boolean step(Handle handle, long expectedVersion, String what, Change change) {
    return handle
            .createUpdate(
                """
                UPDATE desk SET version = version + 1, what = :what, made_by = :by, made_at = :at
                WHERE id = 1 AND version = :version
                """)
            .bind("version", expectedVersion)
            .bind("what", what)
            .bind("by", change.by())
            .bind("at", change.at().toEpochMilli())
            .execute()
        == 1;
  }

  static long insert(Handle handle, NewState state) {
    return handle
        .createQuery(
            """
            INSERT INTO week_state (parent, plan_number, body, seal, what, why, made_by, made_at)
            VALUES ((SELECT state FROM desk), :number, :body, :seal, :what, :why, :by, :at)
            RETURNING id
            """)
        .bind("number", state.planNumber())
        .bind("body", state.body().bytes())
        .bind("seal", state.body().sha256())
        .bind("what", state.what())
        .bind("why", state.made().why())
        .bind("by", state.made().by())
        .bind("at", state.made().at().toEpochMilli())
        .mapTo(Long.class)
        .one();
  }

  static void point(Handle handle, long state) {
    handle.createUpdate("UPDATE desk SET state = :state").bind("state", state).execute();
  }

  /** Where undo goes, and what it takes back. */
  static Optional<Place> parent(Handle handle) {
    return place(
        handle,
        """
        SELECT s.parent AS id, s.what FROM week_state s JOIN desk d ON d.state = s.id
        WHERE s.parent IS NOT NULL
        """);
  }

  /** Where redo goes, and what it does again. */
  static Optional<Place> latestChild(Handle handle) {
    return place(
        handle,
        """
        SELECT s.id, s.what FROM week_state s JOIN desk d ON d.state = s.parent
        ORDER BY s.id DESC LIMIT 1
        """);
  }

  /** What lies on the desk, read in one statement so that its parts belong together. */
  static Optional<DeskState> current(Handle handle) {
    return handle
        .createQuery(
            """
            SELECT d.version, s.*,
              (SELECT c.what FROM week_state c WHERE c.parent = s.id ORDER BY c.id DESC LIMIT 1)
                AS redo
            FROM desk d JOIN week_state s ON s.id = d.state
            """)
        .map(DeskRows::state)
        .findOne();
  }

  private static DeskState state(ResultSet row, StatementContext context) throws SQLException {
    String what = row.getString("what");
    row.getLong("parent");
    boolean first = row.wasNull();
    return new DeskState(
        row.getLong("version"),
        row.getLong("id"),
        row.getString("plan_number"),
        Rows.body(row, "the week on the desk"),
        what,
        Rows.change(row),
        first ? Optional.empty() : Optional.of(what),
        Optional.ofNullable(row.getString("redo")));
  }

  private static Optional<Place> place(Handle handle, String sql) {
    return handle
        .createQuery(sql)
        .map((row, context) -> new Place(row.getLong("id"), row.getString("what")))
        .findOne();
  }
}
