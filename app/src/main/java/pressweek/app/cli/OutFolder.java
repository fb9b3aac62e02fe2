package pressweek.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** The folder that a command writes to. */
final class OutFolder {
  private OutFolder() {}

  /**
   * Refuses what is no folder, and a plant's own, where lists would lie among the plant's files.
   *
   * @param out the folder to write to, which need not be there
   * @param plants folders of plants
   */
  static void check(CommandSpec spec, Path out, List<Path> plants) throws IOException {
    if (!Files.exists(out)) {
      return;
    }
    if (!Files.isDirectory(out)) {
      throw new ParameterException(spec.commandLine(), "--out " + out + " is not a folder");
    }
    for (Path plant : plants) {
      if (Files.exists(plant) && Files.isSameFile(out, plant)) {
        throw new ParameterException(
            spec.commandLine(),
            "--out " + out + " is the plant's own folder; expected another one, such as out");
      }
    }
  }
}
