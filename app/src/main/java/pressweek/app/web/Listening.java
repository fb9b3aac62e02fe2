package pressweek.app.web;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where the pages are to be found and whether one logs in.
 *
 * @param host name or number that the server listens on
 * @param port port; 0 for any that is free
 * @param names names by which requests may call it, with or without a port
 * @param door how one comes in
 */
public record Listening(String host, int port, Set<String> names, Door door) {
  private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "localhost", "[::1]");

  /** How one comes in. */
  public sealed interface Door {
    /**
     * Only from this machine; nobody logs in.
     *
     * @param user who it is
     */
    record Local(String user) implements Door {}

    /**
     * By HTTPS; one logs in.
     *
     * @param store PKCS #12 file with key and certificate
     * @param password its password
     */
    record Certificate(Path store, String password) implements Door {
      /** Without the password, so that no message ever shows it. */
      @Override
      public String toString() {
        return "certificate " + store;
      }
    }

    /** Through a proxy which does the HTTPS; one logs in. */
    record Proxy() implements Door {}
  }

  public Listening {
    names = Set.copyOf(names);
  }

  /** This machine only, nobody logs in. */
  public static Listening local(int port, String user) {
    return new Listening("127.0.0.1", port, LOOPBACK, new Door.Local(user));
  }

  /** Whether one logs in. */
  boolean login() {
    return !(door instanceof Door.Local);
  }

  /** The certificate; empty when the server itself speaks HTTP. */
  Optional<Door.Certificate> certificate() {
    return door instanceof Door.Certificate c ? Optional.of(c) : Optional.empty();
  }

  /** Who it is that does not log in. */
  String localName() {
    return door instanceof Door.Local local ? local.user() : "";
  }

  /** Names as requests give them, with the port that the server really has. */
  Set<String> hosts(int realPort) {
    Set<String> hosts = new TreeSet<>();
    for (String name : names) {
      hosts.add(name);
      hosts.add(name + ":" + realPort);
    }
    return hosts;
  }

  /** The address to open. */
  public String address(int realPort) {
    String name =
        names.contains("localhost")
            ? "localhost"
            : names.stream().sorted().findFirst().orElse(host);
    String end = name.matches(".*[^:\\]]:\\d+") || door instanceof Door.Proxy ? "" : ":" + realPort;
    return (login() ? "https://" : "http://") + name + end + "/";
  }
}
