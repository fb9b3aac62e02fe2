package pressweek.app.store.row;

/**
 * A person who may log in.
 *
 * @param name the name to log in with
 * @param role what the person may do, opaque to the store
 * @param passwordHash hash of the password with its salt and settings, opaque to the store
 * @param away whether the person may not log in at present
 */
public record User(String name, String role, String passwordHash, boolean away) {
  /** Without the hash, so that no message ever shows it. */
  @Override
  public String toString() {
    return name + " (" + role + (away ? ", away)" : ")");
  }
}
