package pressweek.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pressweek.app.desk.Desk;
import pressweek.app.store.StoreTrouble;

/** Serves the pages; the commands know no more of them. */
public interface PageServer {
  /**
   * Where to listen.
   *
   * @param host name or number to listen on; empty for this machine only, without login
   * @param port port; 0 for any that is free
   * @param names names by which the pages are called on the network
   * @param certificate the plant's own certificate; empty where a proxy does the HTTPS
   */
  record Place(String host, int port, List<String> names, Optional<Certificate> certificate) {
    public Place {
      names = List.copyOf(names);
    }
  }

  /** A PKCS #12 file and its password. */
  record Certificate(Path file, String password) {
    /** Without the password, so that no message ever shows it. */
    @Override
    public String toString() {
      return "certificate " + file;
    }
  }

  /**
   * Begins to serve a desk.
   *
   * @throws IllegalStateException with words for a person when the place cannot be used
   */
  Running serve(Desk desk, Place place);

  /**
   * Adds somebody who may log in, or gives him another role and password.
   *
   * @return why not, in words; empty when it is done
   */
  Optional<String> person(Desk desk, String name, String role, String password) throws StoreTrouble;

  /**
   * Pages that are served.
   *
   * @param address the address to open
   * @param close ends serving them
   */
  record Running(String address, Runnable close) {}
}
