package pressweek.app.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import pressweek.app.desk.Desk;
import pressweek.app.desk.DeskEvent;
import pressweek.app.desk.Solving;
import pressweek.app.store.StoreTrouble;

/** The server of the pages. */
public final class Server implements AutoCloseable {
  private static final System.Logger LOG = System.getLogger(Server.class.getName());

  /** The largest body that is read, except for files; bytes. */
  private static final long MOST_BYTES = 1_000_000;

  private static final String POLICY =
      "default-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'self'; object-src 'none'";

  private final Desk desk;
  private final Solving solving;
  private final Live live;
  private final Lookout lookout;
  private final Consumer<DeskEvent> listener;
  private final Access access;
  private final Listening listening;
  private final Javalin javalin;

  /**
   * A server, not yet started.
   *
   * @param desk the week
   * @param listening where it listens
   */
  public Server(Desk desk, Listening listening) {
    this.desk = desk;
    this.listening = listening;
    solving = new Solving(desk);
    live = new Live();
    lookout = new Lookout(desk);
    listener = live::tell;
    desk.listen(listener);
    access = new Access(desk, listening);
    javalin = Javalin.create(this::configure);
  }

  /** Begins to listen. */
  public void start() {
    if (listening.certificate().isPresent()) {
      javalin.start();
    } else {
      javalin.start(listening.host(), listening.port());
    }
    lookout.start();
  }

  private void configure(JavalinConfig config) {
    config.startup.showJavalinBanner = false;
    config.http.maxRequestSize = MOST_BYTES;
    config.http.prefer405over404 = true;
    listening.certificate().ifPresent(c -> Tls.listen(config.jetty, listening, c));
    config.routes.before(this::headers);
    config.routes.beforeMatched(this::allow);
    config.routes.exception(HttpResponseException.class, (e, c) -> said(c, e.getStatus(), e));
    config.routes.exception(StoreTrouble.class, Server::troubled);
    config.routes.exception(IOException.class, Server::unread);
    config.routes.exception(RuntimeException.class, Server::failed);
    config.routes.error(404, c -> unknown(c));
    for (Route route : Routes.all(desk, solving, listening)) {
      config.routes.addHttpHandler(
          route.method(),
          route.path(),
          c -> route.work().on(new Asked(c, desk.now())),
          route.right());
    }
    config.routes.sse(Live.PATH, live::join, Right.KNOWN);
  }

  private void headers(Context context) {
    context.header("Content-Security-Policy", POLICY);
    context.header("X-Content-Type-Options", "nosniff");
    context.header("Referrer-Policy", "no-referrer");
    context.header("Cross-Origin-Opener-Policy", "same-origin");
    context.header("Cross-Origin-Resource-Policy", "same-origin");
    context.header("Cache-Control", "no-store");
    if (listening.login()) {
      context.header("Strict-Transport-Security", "max-age=31536000");
    }
  }

  private void allow(Context context) throws StoreTrouble {
    Set<Right> rights = EnumSet.noneOf(Right.class);
    context.routeRoles().forEach(r -> rights.add((Right) r));
    Optional<Access.Refusal> refusal = access.check(context, rights);
    if (refusal.isPresent()) {
      boolean page = context.method() == HandlerType.GET && !context.path().startsWith("/api/");
      if (refusal.get().status() == 401 && page) {
        context.redirect("/login");
      } else {
        new Asked(context, desk.now()).refuse(refusal.get().status(), refusal.get().words());
      }
      context.skipRemainingHandlers();
    }
  }

  private static void said(Context context, int status, Exception e) {
    String words = Optional.ofNullable(e.getMessage()).orElse("that cannot be done");
    context.status(status);
    context.contentType("application/json").result(Asked.object().put("words", words).toString());
  }

  private static void troubled(StoreTrouble trouble, Context context) {
    LOG.log(System.Logger.Level.WARNING, trouble.getMessage(), trouble);
    said(context, 503, trouble);
  }

  private static void unread(IOException e, Context context) {
    LOG.log(System.Logger.Level.WARNING, "a file", e);
    context.status(503);
    String words = "a file of the plant's folder cannot be read or written; see the log";
    context.contentType("application/json").result(Asked.object().put("words", words).toString());
  }

  private static void failed(RuntimeException e, Context context) {
    LOG.log(System.Logger.Level.ERROR, context.method() + " " + context.path(), e);
    context.status(500);
    String words = "that is a fault of Pressweek, not yours; nothing was changed; see the log";
    context.contentType("application/json").result(Asked.object().put("words", words).toString());
  }

  private static void unknown(Context context) {
    if (context.result() == null || context.result().isEmpty()) {
      context
          .contentType("application/json")
          .result(Asked.object().put("words", "there is no such page").toString());
    }
  }

  /** The address to open. */
  public String address() {
    return listening.address(port());
  }

  /** The port it listens on. */
  public int port() {
    return javalin.port();
  }

  @Override
  public void close() {
    desk.unlisten(listener);
    lookout.close();
    live.close();
    solving.close();
    javalin.stop();
  }
}
