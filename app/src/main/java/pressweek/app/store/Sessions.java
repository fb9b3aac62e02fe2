package pressweek.app.store;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import pressweek.app.store.row.Body;
import pressweek.app.store.row.Session;

/**
 * Who is logged in. The store keeps the SHA-256 of a token, never the token: who reads the file
 * cannot log in with what stands there. Tokens are long and drawn at random, so that a plain hash
 * will do.
 */
public final class Sessions {
  private final Database database;

  Sessions(Database database) {
    this.database = database;
  }

  /** Opens a session under a token that only its browser knows. */
  public void open(String token, Session session) throws StoreTrouble {
    database.write(
        handle ->
            handle.execute(
                "INSERT INTO login (token_sha256, person, csrf, expires_at) VALUES (?, ?, ?, ?)",
                hash(token),
                session.user(),
                session.csrf(),
                session.expires().toEpochMilli()));
  }

  /** The session of a token, if it has not expired at that moment. */
  public Optional<Session> find(String token, Instant at) throws StoreTrouble {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM login WHERE token_sha256 = :token AND expires_at > :at")
                .bind("token", hash(token))
                .bind("at", at.toEpochMilli())
                .map(
                    (row, context) ->
                        new Session(
                            row.getString("person"),
                            row.getString("csrf"),
                            Rows.instant(row, "expires_at")))
                .findOne());
  }

  /** Lets a session hold until then. */
  public void extend(String token, Instant expires) throws StoreTrouble {
    database.write(
        handle ->
            handle.execute(
                "UPDATE login SET expires_at = ? WHERE token_sha256 = ?",
                expires.toEpochMilli(),
                hash(token)));
  }

  /** Ends a session. */
  public void close(String token) throws StoreTrouble {
    database.write(
        handle -> handle.execute("DELETE FROM login WHERE token_sha256 = ?", hash(token)));
  }

  /** Ends all sessions of a user. */
  public void closeAll(String user) throws StoreTrouble {
    database.write(handle -> closeAll(handle, user));
  }

  /** Forgets what has expired at that moment; how many. */
  public int purge(Instant at) throws StoreTrouble {
    return database.write(
        handle -> handle.execute("DELETE FROM login WHERE expires_at <= ?", at.toEpochMilli()));
  }

  static int closeAll(Handle handle, String user) {
    return handle.execute("DELETE FROM login WHERE person = ?", user);
  }

  private static String hash(String token) {
    return Body.of(token).sha256();
  }
}
