package pressweek.app.cli;

import java.util.Optional;
import pressweek.app.desk.Desk;

/** What the commands have where no pages can be served. */
enum NoPages implements PageServer {
  HERE;

  @Override
  public Running serve(Desk desk, Place place) {
    throw new IllegalStateException("there are no pages here");
  }

  @Override
  public Optional<String> person(Desk desk, String name, String role, String password) {
    return Optional.of("there are no pages here");
  }
}
