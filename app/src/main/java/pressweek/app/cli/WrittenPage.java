package pressweek.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;

/** A page as a file. */
final class WrittenPage {
  private WrittenPage() {}

  /** Writes a page and prints its path; the exit code of the command. */
  static int write(Path file, String page, CommandLine line) {
    try {
      Path folder = file.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
      Files.writeString(file, page);
    } catch (IOException e) {
      line.getErr().println("pressweek: cannot write " + file + ": " + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
    line.getOut().println(file);
    line.getOut().flush();
    return ExitCode.DONE;
  }
}
