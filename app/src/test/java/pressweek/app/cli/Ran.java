package pressweek.app.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import picocli.CommandLine;

/**
 * What a command did.
 *
 * @param exitCode exit code
 * @param out what it printed
 * @param err what it printed on standard error
 */
record Ran(int exitCode, String out, String err) {
  /** Runs the program in this process. */
  static Ran pressweek(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = RootCommand.commandLine();
    line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
    return new Ran(line.execute(args), out.toString(), err.toString());
  }

  /** The lines that it printed. */
  List<String> lines() {
    return out.lines().toList();
  }
}
