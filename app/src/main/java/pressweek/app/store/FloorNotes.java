package pressweek.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.FloorNote;

/** What the floor reported, and into which plan it was taken. */
public final class FloorNotes {
  private final Database database;

  FloorNotes(Database database) {
    this.database = database;
  }

  /**
   * Adds what was reported, all or none.
   *
   * @return the numbers under which it is found
   */
  public List<Long> add(List<FloorNote.Event> events, Change change) throws StoreTrouble {
    return database.write(
        handle -> {
          List<Long> ids = new ArrayList<>();
          for (FloorNote.Event event : events) {
            ids.add(insert(handle, event, change));
            String what = "reported " + event.kind() + " of " + event.what();
            History.write(handle, what, "floor " + event.what(), change);
          }
          return List.copyOf(ids);
        });
  }

  /**
   * Notes that a plan takes these into account. One that was taken into a plan before stays there.
   *
   * @return how many were taken
   */
  public int takeInto(String planNumber, List<Long> ids, Change change) throws StoreTrouble {
    return database.write(
        handle -> {
          int taken = 0;
          for (long id : ids) {
            taken +=
                handle.execute(
                    "UPDATE floor_note SET plan_number = ? WHERE id = ? AND plan_number IS NULL",
                    planNumber,
                    id);
          }
          if (taken > 0) {
            String about = "plan " + planNumber;
            History.write(handle, "took " + taken + " floor notes into " + about, about, change);
          }
          return taken;
        });
  }

  /** What no plan has taken into account, in the order in which it was reported. */
  public List<FloorNote> open() throws StoreTrouble {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM floor_note WHERE plan_number IS NULL ORDER BY id")
                .map(FloorNotes::floorNote)
                .list());
  }

  /** What was reported last, the last first. */
  public List<FloorNote> latest(int most) throws StoreTrouble {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM floor_note ORDER BY id DESC LIMIT :most")
                .bind("most", most)
                .map(FloorNotes::floorNote)
                .list());
  }

  private static long insert(Handle handle, FloorNote.Event event, Change change) {
    return handle
        .createQuery(
            """
            INSERT INTO floor_note (kind, what, from_at, until_at, quantity, note, made_by, made_at)
            VALUES (:kind, :what, :from, :until, :quantity, :note, :by, :at)
            RETURNING id
            """)
        .bind("kind", event.kind())
        .bind("what", event.what())
        .bindByType("from", event.from().map(Instant::toEpochMilli).orElse(null), Long.class)
        .bindByType("until", event.until().map(Instant::toEpochMilli).orElse(null), Long.class)
        .bindByType(
            "quantity",
            event.quantity().isPresent() ? event.quantity().getAsInt() : null,
            Integer.class)
        .bind("note", event.note())
        .bind("by", change.by())
        .bind("at", change.at().toEpochMilli())
        .mapTo(Long.class)
        .one();
  }

  private static FloorNote floorNote(ResultSet row, StatementContext context) throws SQLException {
    int quantity = row.getInt("quantity");
    OptionalInt pieces = row.wasNull() ? OptionalInt.empty() : OptionalInt.of(quantity);
    FloorNote.Event event =
        new FloorNote.Event(
            row.getString("kind"),
            row.getString("what"),
            Rows.instantIfAny(row, "from_at"),
            Rows.instantIfAny(row, "until_at"),
            pieces,
            row.getString("note"));
    return new FloorNote(
        row.getLong("id"),
        event,
        row.getString("made_by"),
        Rows.instant(row, "made_at"),
        Optional.ofNullable(row.getString("plan_number")));
  }
}
