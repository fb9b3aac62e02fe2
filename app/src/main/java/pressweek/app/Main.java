package pressweek.app;

import pressweek.app.cli.PageServer;
import pressweek.app.cli.RootCommand;
import pressweek.app.desk.Desk;
import pressweek.app.web.Listening;
import pressweek.app.web.Server;

/** The start of the program. */
public final class Main {
  private Main() {}

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] args) {
    System.exit(RootCommand.run(Main::serve, args));
  }

  private static PageServer.Running serve(Desk desk, int port) {
    String user = System.getProperty("user.name", "somebody");
    Server server = new Server(desk, Listening.local(port, user));
    server.start();
    return new PageServer.Running() {
      @Override
      public String address() {
        return "http://localhost:" + server.port() + "/";
      }

      @Override
      public void close() {
        server.close();
      }
    };
  }
}
