package pressweek.app.web;

import static pressweek.app.web.Route.get;
import static pressweek.app.web.Route.post;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.desk.FolderLook;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.Entry;
import pressweek.app.store.row.Session;
import pressweek.app.store.row.User;

/** Who uses the pages: logging in and out, people and roles, and who changed what. */
final class UserRoutes {
  private static final Field NAME = Field.text("name", "the person's name");
  private static final Field ROLE =
      Field.text("role", "order_desk, scheduler, handler, setter or viewer");
  private static final Field PASSWORD = Field.text("password", "the person's password");
  private static final Duration SESSION = Duration.ofHours(12);
  private static final Duration WINDOW = Duration.ofMinutes(15);
  private static final int MOST_OF_NAME = 5;
  private static final int MOST_OF_ADDRESS = 30;
  private static final int SHOWN = 200;
  private static final int MOST_LINES = 5_000;

  private final Desk desk;
  private final Listening listening;
  private final People people;

  UserRoutes(Desk desk, Listening listening) {
    this.desk = desk;
    this.listening = listening;
    people = new People(desk.store());
  }

  List<Route> routes() {
    return List.of(
        get("/api/me", Right.KNOWN, "who asks and what he may do", this::me),
        post("/api/login", Right.OPEN, "logs in", this::login).asks(NAME, PASSWORD),
        post("/api/logout", Right.KNOWN, "logs out", this::logout),
        get("/api/users", Right.USERS, "who may use the pages", this::users),
        post("/api/users", Right.USERS, "adds somebody", this::add).asks(NAME, ROLE, PASSWORD),
        post("/api/users/{name}", Right.USERS, "changes role, password or absence", this::change)
            .asks(
                ROLE.unneeded(),
                PASSWORD.unneeded(),
                Field.of("away", "boolean", "whether the person may not log in").unneeded()),
        get("/api/history", Right.WEEK, "who changed what", this::history)
            .asks(
                Field.whole("from", "minutes since 1970 UTC").inQuery().unneeded(),
                Field.whole("before", "an entry's number").inQuery().unneeded()));
  }

  private void me(Asked asked) throws IOException {
    Who who = asked.who();
    FolderLook.Look look = desk.folder().look();
    ObjectNode json = Asked.object().put("name", who.name()).put("role", who.role().name());
    json.put("roleWords", who.role().words()).put("token", who.token());
    json.put("local", !listening.login());
    ArrayNode may = json.putArray("may");
    for (Right right : Right.values()) {
      if (who.role().may(right) && right != Right.OPEN && right != Right.KNOWN) {
        may.add(right.name().toLowerCase(Locale.ROOT).replace('_', '-'));
      }
    }
    if (who.role().may(Right.LISTS)) {
      may.add("changes").add("crew");
    }
    json.put("plant", look.folder().plant().name());
    look.week().problem().ifPresent(p -> json.put("zone", p.plant().hours().zone().getId()));
    json.put("now", desk.nowMin());
    asked.answer(json);
  }

  private void login(Asked asked) throws StoreTrouble {
    String name = asked.text("name").strip();
    String password = asked.text("password");
    String address = asked.context().ip();
    Instant since = asked.at().minus(WINDOW);
    boolean often =
        desk.store().failedLogins().ofName(name, since) >= MOST_OF_NAME
            || desk.store().failedLogins().ofAddress(address, since) >= MOST_OF_ADDRESS;
    if (often) {
      asked.refuse(429, "too many logins have failed; wait a quarter of an hour");
      return;
    }
    Optional<User> user = desk.store().users().find(name).filter(u -> !u.away());
    boolean right = people.matches(password, user);
    if (!right) {
      desk.store().failedLogins().add(name, address, asked.at());
      asked.refuse(401, "name or password is wrong");
      return;
    }
    desk.store().failedLogins().forget(name);
    String token = Access.word();
    Instant expires = asked.at().plus(SESSION);
    desk.store().sessions().open(token, new Session(name, Access.word(), expires));
    desk.store().history().add("logged in", loginOf(name), Change.of(name, asked.at()));
    asked.context().cookie(cookie(token, (int) SESSION.toSeconds()));
    asked.answer(Asked.object().put("name", name));
  }

  private Cookie cookie(String value, int seconds) {
    Cookie cookie = new Cookie(Access.COOKIE, value);
    cookie.setHttpOnly(true);
    cookie.setSecure(listening.login());
    cookie.setSameSite(SameSite.STRICT);
    cookie.setPath("/");
    cookie.setMaxAge(seconds);
    return cookie;
  }

  private void logout(Asked asked) throws StoreTrouble {
    String token = asked.context().cookie(Access.COOKIE);
    if (token != null) {
      desk.store().sessions().close(token);
    }
    asked.context().cookie(cookie("", 0));
    asked.answer(Asked.object());
  }

  private void users(Asked asked) throws StoreTrouble {
    ArrayNode json = Asked.JSON.createArrayNode();
    for (User user : desk.store().users().all()) {
      ObjectNode one = json.addObject().put("name", user.name()).put("role", user.role());
      one.put("away", user.away()).putNull("seen");
      desk.store().history().about(loginOf(user.name()), 1).stream()
          .findFirst()
          .ifPresent(e -> one.put("seen", minute(e.change().at())));
    }
    asked.answer(json);
  }

  /** What a line of the history is about that tells of a login. */
  private static String loginOf(String name) {
    return "login " + name;
  }

  private static long minute(Instant at) {
    return Math.floorDiv(at.getEpochSecond(), 60L);
  }

  private void add(Asked asked) throws StoreTrouble {
    String name = asked.text("name").strip();
    People.wrongName(name)
        .ifPresent(
            words -> {
              throw new BadRequestResponse(words);
            });
    User user = new User(name, role(asked).name(), hash(asked.text("password")), false);
    if (desk.store().users().add(user, asked.change())) {
      users(asked);
    } else {
      asked.refuse(409, "somebody has the name " + name + " already");
    }
  }

  private static Role role(Asked asked) {
    String role = asked.text("role");
    return Role.of(role).orElseThrow(() -> new BadRequestResponse(People.wrongRole(role)));
  }

  private String hash(String password) {
    People.wrongPassword(password)
        .ifPresent(
            words -> {
              throw new BadRequestResponse(words);
            });
    return people.hash(password);
  }

  private void change(Asked asked) throws StoreTrouble {
    String name = asked.context().pathParam("name");
    Optional<User> found = desk.store().users().find(name);
    if (found.isEmpty()) {
      asked.refuse(404, "nobody has that name");
      return;
    }
    User user = found.get();
    String role = asked.node("role").isTextual() ? role(asked).name() : user.role();
    boolean fresh = asked.node("password").isTextual();
    String hash = fresh ? hash(asked.text("password")) : user.passwordHash();
    boolean away = asked.node("away").isBoolean() ? asked.node("away").booleanValue() : user.away();
    desk.store().users().put(new User(user.name(), role, hash, away), asked.change());
    if (fresh || away) {
      desk.store().sessions().closeAll(user.name());
    }
    users(asked);
  }

  /** The lines since a minute, or the latest ones, the last one first. */
  private void history(Asked asked) throws StoreTrouble {
    long from =
        asked.optionalQuery("from").isPresent()
            ? asked.queryNumber("from", Integer.MIN_VALUE, Integer.MAX_VALUE)
            : Long.MIN_VALUE;
    long before =
        asked.optionalQuery("before").isPresent()
            ? asked.queryNumber("before", 0, Long.MAX_VALUE)
            : Long.MAX_VALUE;
    int most = from == Long.MIN_VALUE ? SHOWN : MOST_LINES;
    ArrayNode json = Asked.JSON.createArrayNode();
    for (Entry entry : desk.store().history().before(before, most)) {
      Change change = entry.change();
      if (minute(change.at()) < from) {
        continue;
      }
      json.addObject()
          .put("id", entry.id())
          .put("at", minute(change.at()))
          .put("by", change.by())
          .put("what", entry.what())
          .put("why", change.why())
          .put("about", entry.about());
    }
    asked.answer(json);
  }
}
