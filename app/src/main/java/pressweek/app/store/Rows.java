package pressweek.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import pressweek.app.store.row.Body;
import pressweek.app.store.row.Change;

/** The columns that several tables have, read the same way. */
final class Rows {
  private Rows() {}

  static Instant instant(ResultSet row, String column) throws SQLException {
    return Instant.ofEpochMilli(row.getLong(column));
  }

  static Optional<Instant> instantIfAny(ResultSet row, String column) throws SQLException {
    Instant instant = instant(row, column);
    return row.wasNull() ? Optional.empty() : Optional.of(instant);
  }

  static Change change(ResultSet row) throws SQLException {
    return new Change(row.getString("made_by"), instant(row, "made_at"), row.getString("why"));
  }

  /** A body whose seal has been compared; what an older program wrote has none. */
  static Body body(ResultSet row, String what) throws SQLException {
    Body body = Body.of(row.getBytes("body"));
    String seal = row.getString("seal");
    if (!seal.isEmpty() && !seal.equals(body.sha256())) {
      throw new BrokenSeal(what + " is not as it was written");
    }
    return body;
  }

  /** Bytes which the database gives back otherwise than it was given them. */
  static final class BrokenSeal extends SQLException {
    private static final long serialVersionUID = 1L;

    BrokenSeal(String reason) {
      super(reason);
    }
  }
}
