package pressweek.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The results of the benchmarks: one page, of which each benchmark writes its own part anew and
 * leaves the others as they are. A part begins with a heading of the first level.
 */
public final class ResultsFile {
  private static final String HEADING = "# ";

  private final Path file;

  /** The page at that place, which need not be there yet. */
  public ResultsFile(Path file) {
    this.file = file;
  }

  /** The machine, the version of Java and the day, as a line below a heading. */
  public static String machine() {
    Runtime runtime = Runtime.getRuntime();
    return String.format(
        Locale.ROOT,
        "%s, %d cores, %d MB heap at most, %s %s, Java %s.",
        LocalDate.now(ZoneOffset.UTC),
        runtime.availableProcessors(),
        runtime.maxMemory() / 1_048_576,
        System.getProperty("os.name"),
        System.getProperty("os.arch"),
        Runtime.version());
  }

  /**
   * Writes a part anew, at its old place or else at the end.
   *
   * @param heading heading of the part, without its mark
   * @param lines lines below it
   */
  public void replace(String heading, List<String> lines) throws IOException {
    List<String> old = Files.exists(file) ? Files.readAllLines(file) : List.of();
    List<String> all = new ArrayList<>();
    boolean inside = false;
    boolean written = false;
    for (String line : old) {
      if (line.startsWith(HEADING)) {
        inside = line.equals(HEADING + heading);
        if (inside) {
          write(heading, lines, all);
          written = true;
        }
      }
      if (!inside) {
        all.add(line);
      }
    }
    if (!written) {
      if (!all.isEmpty() && !all.get(all.size() - 1).isBlank()) {
        all.add("");
      }
      write(heading, lines, all);
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    Files.writeString(file, String.join("\n", all).stripTrailing() + "\n");
  }

  private static void write(String heading, List<String> lines, List<String> all) {
    all.add(HEADING + heading);
    all.add("");
    all.addAll(lines);
    all.add("");
  }
}
