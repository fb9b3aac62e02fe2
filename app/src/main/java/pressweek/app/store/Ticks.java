package pressweek.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.Tick;

/**
 * The ticks on pulls, in the order in which they arrived. A tick that is taken back stays in the
 * book beside the one that takes it back.
 */
public final class Ticks {
  /** Keys in one question: well below what either database takes. */
  private static final int KEYS_AT_ONCE = 500;

  private final Database database;

  Ticks(Database database) {
    this.database = database;
  }

  /**
   * Adds ticks, all or none. One whose id is there already changes nothing, whatever else it says.
   *
   * @return the ids that are new
   */
  public List<UUID> add(List<Tick> ticks) throws StoreTrouble {
    return database.write(
        handle -> {
          List<UUID> fresh = new ArrayList<>();
          for (Tick tick : ticks) {
            if (insert(handle, tick) == 1) {
              fresh.add(tick.id());
              note(handle, tick);
            }
          }
          return List.copyOf(fresh);
        });
  }

  /**
   * The last tick of each of these pulls that was not taken back; no entry for a pull without one.
   */
  public Map<String, Tick> standing(Collection<String> pulls) throws StoreTrouble {
    List<String> keys = pulls.stream().distinct().toList();
    return database.read(
        handle -> {
          Map<String, Tick> standing = new LinkedHashMap<>();
          for (int from = 0; from < keys.size(); from += KEYS_AT_ONCE) {
            int to = Math.min(keys.size(), from + KEYS_AT_ONCE);
            for (Tick tick : untaken(handle, keys.subList(from, to))) {
              standing.put(tick.pull(), tick);
            }
          }
          return standing;
        });
  }

  /**
   * The last ticks that arrived, the last one first, those taken back and taking back among them.
   */
  public List<Tick> latest(int most) throws StoreTrouble {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM tick ORDER BY seq DESC LIMIT :most")
                .bind("most", most)
                .map(Ticks::tick)
                .list());
  }

  private static List<Tick> untaken(Handle handle, List<String> keys) {
    return handle
        .createQuery(
            """
            SELECT t.* FROM tick t
            WHERE t.pull IN (<keys>) AND t.undoes IS NULL
              AND NOT EXISTS (SELECT 1 FROM tick u WHERE u.undoes = t.id)
            ORDER BY t.seq
            """)
        .bindList("keys", keys)
        .map(Ticks::tick)
        .list();
  }

  private static int insert(Handle handle, Tick tick) {
    return handle
        .createUpdate(
            """
            INSERT INTO tick (id, pull, plan_number, pieces, short_pieces, reason, undoes, made_by,
              at_client, at_server)
            VALUES (:id, :pull, :number, :pieces, :short, :reason, :undoes, :by, :client, :server)
            ON CONFLICT (id) DO NOTHING
            """)
        .bind("id", tick.id().toString())
        .bind("pull", tick.pull())
        .bind("number", tick.planNumber())
        .bind("pieces", tick.pieces())
        .bind("short", tick.shortPieces())
        .bind("reason", tick.reason())
        .bindByType("undoes", tick.undoes().map(UUID::toString).orElse(null), String.class)
        .bind("by", tick.stamp().by())
        .bind("client", tick.stamp().client().toEpochMilli())
        .bind("server", tick.stamp().server().toEpochMilli())
        .execute();
  }

  private static void note(Handle handle, Tick tick) {
    String missing = tick.shortPieces() == 0 ? "" : ", short " + tick.shortPieces();
    String what =
        tick.undoes().isPresent()
            ? "took back a tick on pull " + tick.pull()
            : "ticked " + tick.pieces() + missing + " on pull " + tick.pull();
    Change change = new Change(tick.stamp().by(), tick.stamp().server(), tick.reason());
    History.write(handle, what, "pull " + tick.pull(), change);
  }

  private static Tick tick(ResultSet row, StatementContext context) throws SQLException {
    return new Tick(
        UUID.fromString(row.getString("id")),
        row.getString("pull"),
        row.getString("plan_number"),
        row.getInt("pieces"),
        row.getInt("short_pieces"),
        row.getString("reason"),
        Optional.ofNullable(row.getString("undoes")).map(UUID::fromString),
        new Tick.Stamp(
            row.getString("made_by"),
            Rows.instant(row, "at_client"),
            Rows.instant(row, "at_server")));
  }
}
