package pressweek.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import pressweek.data.files.FolderReader;
import pressweek.data.problem.Problem;
import pressweek.data.week.Week;

/** Problems read from folders, drawn ones through a folder that is deleted again. */
public final class DrawnProblem {
  private DrawnProblem() {}

  /**
   * The problem of a plant's folder.
   *
   * @throws IOException when it cannot be read or has errors
   */
  public static Problem read(Path folder) throws IOException {
    return Week.build(FolderReader.read(folder), 0)
        .problem()
        .orElseThrow(() -> new IOException(folder + " has errors; see pressweek check"));
  }

  /** The problem of a drawn plant. */
  public static Problem draw(PlantSize size, long seed) throws IOException {
    Path folder = Files.createTempDirectory("plant");
    try {
      PlantGenerator.write(folder, size, seed);
      return read(folder);
    } finally {
      delete(folder);
    }
  }

  private static void delete(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> walk = Files.walk(folder)) {
      files = walk.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path file : files) {
      Files.delete(file);
    }
  }
}
