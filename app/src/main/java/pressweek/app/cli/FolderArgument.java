package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import pressweek.data.files.Folder;

/** The plant's folder, a command's first argument. */
final class FolderArgument {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "The plant's folder.")
  private Path path;

  @Mixin private ScenarioOption scenario;

  /** The folder as it was read; empty, and said on {@code err}, when it cannot be read at all. */
  Optional<Folder> read(PrintWriter err) {
    if (!Files.isDirectory(path)) {
      err.println("pressweek: " + path + " is not a folder; expected the folder of a plant");
      return Optional.empty();
    }
    try {
      return Optional.of(scenario.read(path));
    } catch (IOException e) {
      err.println("pressweek: cannot read " + path + ": " + e.getMessage());
      return Optional.empty();
    }
  }
}
