package pressweek.app.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import pressweek.app.desk.Desk;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Session;
import pressweek.app.store.row.User;

/**
 * Who may do what. A request must name a host that the server goes by, a change must come from one
 * of its own pages and bring the word that only they know, and the role must have the right that
 * the route asks for.
 */
final class Access {
  static final String COOKIE = "pressweek";
  static final String TOKEN = "X-Pressweek-Token";

  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int BYTES = 32;

  private final Desk desk;
  private final Listening listening;
  private final Who local;

  /** What is wrong with a request. */
  record Refusal(int status, String words) {}

  Access(Desk desk, Listening listening) {
    this.desk = desk;
    this.listening = listening;
    local = new Who(listening.localName(), Role.LOCAL, word());
  }

  /** A word that nobody can guess. */
  static String word() {
    byte[] bytes = new byte[BYTES];
    RANDOM.nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }

  /** Why a request is not answered; empty when it is, and who asks is known then. */
  Optional<Refusal> check(Context context, Set<? extends Enum<?>> rights) throws StoreTrouble {
    int port = context.req().getLocalPort();
    if (!listening.hosts(port).contains(host(context))) {
      return Optional.of(
          new Refusal(421, "the pages do not go by that name; use " + listening.address(port)));
    }
    boolean changes = context.method() != HandlerType.GET && context.method() != HandlerType.HEAD;
    if (changes && !isOurs(context)) {
      return Optional.of(new Refusal(403, "the request does not come from one of the pages"));
    }
    Optional<Who> who = who(context);
    who.ifPresent(w -> Asked.know(context, w));
    if (rights.isEmpty() || rights.contains(Right.OPEN)) {
      return Optional.empty();
    }
    if (who.isEmpty()) {
      return Optional.of(new Refusal(401, "log in first"));
    }
    if (changes && !isWord(context, who.get().token())) {
      return Optional.of(new Refusal(403, "the page is an old one; load it again"));
    }
    boolean may = rights.stream().allMatch(r -> who.get().role().may((Right) r));
    return may
        ? Optional.empty()
        : Optional.of(new Refusal(403, "that is not for the role " + who.get().role().words()));
  }

  /** Host and port as the request names them. */
  private static String host(Context context) {
    return Objects.requireNonNullElse(context.header("Host"), "").toLowerCase(Locale.ROOT);
  }

  /** A browser says where a change comes from; what is no browser has no cookie to misuse. */
  private static boolean isOurs(Context context) {
    String site = Objects.requireNonNullElse(context.header("Sec-Fetch-Site"), "same-origin");
    String origin = Objects.requireNonNullElse(context.header("Origin"), "");
    return site.equals("same-origin") && (origin.isEmpty() || sameHost(origin, host(context)));
  }

  private static boolean sameHost(String origin, String host) {
    try {
      String authority = new URI(origin).getAuthority();
      return authority != null && authority.toLowerCase(Locale.ROOT).equals(host);
    } catch (URISyntaxException e) {
      return false;
    }
  }

  private static boolean isWord(Context context, String token) {
    String given = Objects.requireNonNullElse(context.header(TOKEN), "");
    return MessageDigest.isEqual(
        given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
  }

  private Optional<Who> who(Context context) throws StoreTrouble {
    if (!listening.login()) {
      return Optional.of(local);
    }
    String cookie = context.cookie(COOKIE);
    if (cookie == null || cookie.length() != 2 * BYTES) {
      return Optional.empty();
    }
    Optional<Session> session = desk.store().sessions().find(cookie, desk.now());
    if (session.isEmpty()) {
      return Optional.empty();
    }
    Optional<User> user = desk.store().users().find(session.get().user()).filter(u -> !u.away());
    return user.flatMap(
        u -> Role.of(u.role()).map(r -> new Who(u.name(), r, session.get().csrf())));
  }
}
