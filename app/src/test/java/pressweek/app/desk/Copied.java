package pressweek.app.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A copy of an example's folder that a test may change. */
public final class Copied {
  private Copied() {}

  /** Copies the input files of an example to a folder. */
  public static Path example(String name, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(Path.of("../examples/" + name))) {
      List<Path> inputs = files.filter(Files::isRegularFile).toList();
      for (Path file : inputs) {
        Files.copy(file, to.resolve(file.getFileName().toString()));
      }
    }
    return to;
  }
}
