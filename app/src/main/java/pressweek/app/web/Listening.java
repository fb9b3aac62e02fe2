package pressweek.app.web;

import java.util.Set;
import java.util.TreeSet;

/**
 * Where the pages are to be found and whether one logs in.
 *
 * @param host name or number that the server listens on
 * @param port port
 * @param names other names by which it is called, with or without a port
 * @param login whether one logs in; only on this machine itself one need not
 * @param secure whether they are reached by HTTPS
 * @param localName who it is that does not log in
 */
public record Listening(
    String host, int port, Set<String> names, boolean login, boolean secure, String localName) {
  private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "localhost", "[::1]");

  public Listening {
    names = Set.copyOf(names);
  }

  /** This machine only, nobody logs in. */
  public static Listening local(int port, String user) {
    return new Listening("127.0.0.1", port, LOOPBACK, false, false, user);
  }

  /** Names with their port, as a request names them. */
  Set<String> hosts() {
    Set<String> hosts = new TreeSet<>();
    for (String name : names) {
      boolean withPort = name.matches(".*[^:\\]]:\\d+|\\[.*]:\\d+");
      hosts.add(name);
      if (!withPort) {
        hosts.add(name + ":" + port);
      }
    }
    hosts.add(host + ":" + port);
    return hosts;
  }

  /** The address to open. */
  public String address() {
    String name = host.equals("127.0.0.1") ? "localhost" : host;
    return (secure ? "https://" : "http://") + name + ":" + port + "/";
  }
}
