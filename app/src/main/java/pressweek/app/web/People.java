package pressweek.app.web;

import java.util.Optional;
import org.springframework.security.crypto.password.Pbkdf2PasswordEncoder;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.User;

/** People who may log in. Passwords are kept as PBKDF2 hashes (RFC 8018) with a salt each. */
public final class People {
  private static final int SHORTEST = 10;
  private static final int LONGEST = 200;

  private final Store store;
  private final Pbkdf2PasswordEncoder passwords =
      Pbkdf2PasswordEncoder.defaultsForSpringSecurity_v5_8();

  /** The people of a store. */
  public People(Store store) {
    this.store = store;
  }

  /**
   * Adds somebody, or gives him another role and password.
   *
   * @return why not, in a sentence; empty when it is done
   */
  public Optional<String> put(String name, String role, String password, Change change)
      throws StoreTrouble {
    Optional<String> wrong = wrongName(name).or(() -> wrongPassword(password));
    Optional<Role> known = Role.of(role);
    if (wrong.isPresent() || known.isEmpty()) {
      return wrong.or(() -> Optional.of(wrongRole(role)));
    }
    store.users().put(new User(name, known.get().name(), hash(password), false), change);
    return Optional.empty();
  }

  static String wrongRole(String role) {
    return "role \"" + role + "\" is another thing; expected " + Role.names();
  }

  static Optional<String> wrongName(String name) {
    boolean good = !name.isBlank() && name.equals(name.strip()) && name.length() <= LONGEST;
    return good
        ? Optional.empty()
        : Optional.of("the name is empty or too long; expected a person's name");
  }

  static Optional<String> wrongPassword(String password) {
    int letters = password.length();
    return letters >= SHORTEST && letters <= LONGEST
        ? Optional.empty()
        : Optional.of(
            "the password has %d letters; expected %d to %d".formatted(letters, SHORTEST, LONGEST));
  }

  String hash(String password) {
    return passwords.encode(password);
  }

  /** Whether a password is right; takes as long for a name that nobody has. */
  boolean matches(String password, Optional<User> user) {
    if (password.length() > LONGEST) {
      return false;
    }
    if (user.isEmpty()) {
      String unused = passwords.encode(password);
      return unused.isEmpty();
    }
    return passwords.matches(password, user.get().passwordHash());
  }
}
