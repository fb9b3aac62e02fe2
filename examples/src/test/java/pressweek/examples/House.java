package pressweek.examples;

import java.nio.file.Files;
import java.nio.file.Path;

/** Where the sources of the whole house stand. */
final class House {
  private House() {}

  /** The folder with the launcher, which is the working folder of a test or one above it. */
  static Path root() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("pressweek.cmd"))) {
      folder = folder.getParent();
      if (folder == null) {
        throw new IllegalStateException("no folder with pressweek.cmd above the working folder");
      }
    }
    return folder;
  }
}
