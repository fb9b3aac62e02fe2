package pressweek.app;

import io.javalin.util.JavalinException;
import java.io.UncheckedIOException;
import java.net.BindException;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pressweek.app.cli.PageServer;
import pressweek.app.desk.Desk;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.app.web.Listening;
import pressweek.app.web.People;
import pressweek.app.web.Server;

/** The pages of this program, as the command that opens them asks for them. */
final class ServedPages implements PageServer {
  @Override
  public Running serve(Desk desk, Place place) {
    Server server = new Server(desk, listening(place));
    try {
      server.start();
    } catch (JavalinException | UncheckedIOException e) {
      server.close();
      throw new IllegalStateException(words(e, place.port()), e);
    }
    return new Running(server.address(), server::close);
  }

  private static String words(Throwable e, int port) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof BindException) {
        return "port %d cannot be listened at (%s); expected another one with --port, or 0 for any"
            .formatted(port, cause.getMessage());
      }
    }
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }

  private static Listening listening(Place place) {
    if (place.host().isEmpty()) {
      return Listening.local(place.port(), user());
    }
    Set<String> names = new TreeSet<>(place.names());
    Listening.Door door =
        place
            .certificate()
            .<Listening.Door>map(c -> new Listening.Door.Certificate(c.file(), c.password()))
            .orElse(new Listening.Door.Proxy());
    return new Listening(place.host(), place.port(), names, door);
  }

  private static String user() {
    return System.getProperty("user.name", "somebody");
  }

  @Override
  public Optional<String> person(Desk desk, String name, String role, String password)
      throws StoreTrouble {
    return new People(desk.store()).put(name, role, password, Change.of(user(), desk.now()));
  }
}
