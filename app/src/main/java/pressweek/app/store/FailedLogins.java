package pressweek.app.store;

import java.time.Instant;

/** Logins that failed, so that guessing can be slowed down. */
public final class FailedLogins {
  private final Database database;

  FailedLogins(Database database) {
    this.database = database;
  }

  /**
   * Notes a failed login.
   *
   * @param name the name that was tried, whether or not there is such a user
   * @param address where it came from
   * @param at when
   */
  public void add(String name, String address, Instant at) throws StoreTrouble {
    database.write(
        handle ->
            handle.execute(
                "INSERT INTO failed_login (person, address, made_at) VALUES (?, ?, ?)",
                name,
                address,
                at.toEpochMilli()));
  }

  /** How many there were for a name since a moment, that moment included. */
  public int ofName(String name, Instant since) throws StoreTrouble {
    return count("SELECT count(*) FROM failed_login WHERE person = :key", name, since);
  }

  /** How many there were from an address since a moment, that moment included. */
  public int ofAddress(String address, Instant since) throws StoreTrouble {
    return count("SELECT count(*) FROM failed_login WHERE address = :key", address, since);
  }

  /** Forgets those of a name, after a login that succeeded. */
  public void forget(String name) throws StoreTrouble {
    database.write(handle -> handle.execute("DELETE FROM failed_login WHERE person = ?", name));
  }

  /** Forgets those before a moment; how many. */
  public int purge(Instant before) throws StoreTrouble {
    return database.write(
        handle ->
            handle.execute("DELETE FROM failed_login WHERE made_at < ?", before.toEpochMilli()));
  }

  private int count(String sql, String key, Instant since) throws StoreTrouble {
    return database.read(
        handle ->
            handle
                .createQuery(sql + " AND made_at >= :since")
                .bind("key", key)
                .bind("since", since.toEpochMilli())
                .mapTo(Integer.class)
                .one());
  }
}
