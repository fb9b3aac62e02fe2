package pressweek.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.Entry;

/** Who changed what, when and why. Lines are added, never changed: the database refuses it. */
public final class History {
  private final Database database;

  History(Database database) {
    this.database = database;
  }

  /** Adds a line about something that the store does not hold, such as a replaced file. */
  public void add(String what, String about, Change change) throws StoreTrouble {
    database.write(
        handle -> {
          write(handle, what, about, change);
          return change;
        });
  }

  /** The latest lines, the last one first. */
  public List<Entry> latest(int most) throws StoreTrouble {
    return before(Long.MAX_VALUE, most);
  }

  /** The lines before one, the last one first: the next page. */
  public List<Entry> before(long id, int most) throws StoreTrouble {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM history WHERE id < :id ORDER BY id DESC LIMIT :most")
                .bind("id", id)
                .bind("most", most)
                .map(History::entry)
                .list());
  }

  /** The latest lines about one thing, the last one first. */
  public List<Entry> about(String key, int most) throws StoreTrouble {
    return database.read(
        handle ->
            handle
                .createQuery(
                    "SELECT * FROM history WHERE about = :about ORDER BY id DESC LIMIT :most")
                .bind("about", key)
                .bind("most", most)
                .map(History::entry)
                .list());
  }

  /** Adds a line in the transaction of the change itself. */
  static void write(Handle handle, String what, String about, Change change) {
    handle
        .createUpdate(
            """
            INSERT INTO history (made_by, made_at, what, why, about)
            VALUES (:by, :at, :what, :why, :about)
            """)
        .bind("by", change.by())
        .bind("at", change.at().toEpochMilli())
        .bind("what", what)
        .bind("why", change.why())
        .bind("about", about)
        .execute();
  }

  private static Entry entry(ResultSet row, StatementContext context) throws SQLException {
    return new Entry(
        row.getLong("id"), row.getString("what"), row.getString("about"), Rows.change(row));
  }
}
