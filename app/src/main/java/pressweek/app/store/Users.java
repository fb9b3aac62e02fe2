package pressweek.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.User;

/** The people who may log in. Nobody is deleted, since the history names them: they are away. */
public final class Users {
  private static final String REPLACED =
      "UPDATE SET role = excluded.role, password_hash = excluded.password_hash,"
          + " away = excluded.away";

  private final Database database;

  Users(Database database) {
    this.database = database;
  }

  /** All users by name. */
  public List<User> all() throws StoreTrouble {
    return database.read(
        handle ->
            handle.createQuery("SELECT * FROM person").map(Users::user).stream()
                .sorted(Comparator.comparing(User::name))
                .toList());
  }

  /** The user with that name, written the same. */
  public Optional<User> find(String name) throws StoreTrouble {
    return database.read(handle -> find(handle, name));
  }

  /**
   * Adds a user, or puts these particulars in place of the former ones. Whoever gets another role
   * or password, or is away, is logged out everywhere. The same again changes nothing.
   */
  public void put(User user, Change change) throws StoreTrouble {
    database.write(
        handle -> {
          Optional<User> former = find(handle, user.name());
          if (!former.equals(Optional.of(user))) {
            insert(handle, user, REPLACED);
            Sessions.closeAll(handle, user.name());
            note(handle, former, user, change);
          }
          return user;
        });
  }

  /** Adds a user if there is none of that name; whether it was added. */
  public boolean add(User user, Change change) throws StoreTrouble {
    return database.write(
        handle -> {
          boolean added = insert(handle, user, "NOTHING") == 1;
          if (added) {
            note(handle, Optional.empty(), user, change);
          }
          return added;
        });
  }

  private static int insert(Handle handle, User user, String ifThere) {
    return handle
        .createUpdate(
            """
            INSERT INTO person (name, role, password_hash, away)
            VALUES (:name, :role, :hash, :away)
            ON CONFLICT (name) DO\s"""
                + ifThere)
        .bind("name", user.name())
        .bind("role", user.role())
        .bind("hash", user.passwordHash())
        .bind("away", user.away() ? 1 : 0)
        .execute();
  }

  private static void note(Handle handle, Optional<User> former, User user, Change change) {
    History.write(handle, difference(former, user), "user " + user.name(), change);
  }

  private static String difference(Optional<User> former, User user) {
    if (former.isEmpty()) {
      return "added user " + user;
    }
    List<String> parts = new ArrayList<>();
    if (!former.get().role().equals(user.role())) {
      parts.add("role " + former.get().role() + " to " + user.role());
    }
    if (!former.get().passwordHash().equals(user.passwordHash())) {
      parts.add("a new password");
    }
    if (former.get().away() != user.away()) {
      parts.add(user.away() ? "away" : "back");
    }
    return "changed user " + user.name() + ": " + String.join(", ", parts);
  }

  private static Optional<User> find(Handle handle, String name) {
    return handle
        .createQuery("SELECT * FROM person WHERE name = :name")
        .bind("name", name)
        .map(Users::user)
        .findOne();
  }

  private static User user(ResultSet row, StatementContext context) throws SQLException {
    return new User(
        row.getString("name"),
        row.getString("role"),
        row.getString("password_hash"),
        row.getInt("away") != 0);
  }
}
