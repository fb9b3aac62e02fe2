package pressweek.app.cli;

import pressweek.app.desk.Desk;

/** Serves the pages; the commands know no more of them. */
@FunctionalInterface
public interface PageServer {
  /** Begins to serve a desk on this machine. */
  Running serve(Desk desk, int port);

  /** Pages that are served. */
  interface Running extends AutoCloseable {
    /** The address to open. */
    String address();

    @Override
    void close();
  }
}
