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
    return files(Path.of("../examples/" + name), to);
  }

  /** Copies the scenarios of an example to a copy of it. */
  public static void scenarios(String name, Path copy) throws IOException {
    files(Path.of("../examples/" + name + "/scenarios"), copy.resolve("scenarios"));
  }

  private static Path files(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      List<Path> inputs = files.filter(Files::isRegularFile).toList();
      for (Path file : inputs) {
        Files.copy(file, to.resolve(file.getFileName().toString()));
      }
    }
    return to;
  }
}
