package pressweek.examples.words;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pressweek.data.words.WordReader;

/**
 * Measures how many descriptions are read in a second of one core's time, and writes that to the
 * file named. Run it from the folder {@code examples}.
 */
final class WordsSpeed {
  private static final int ROUNDS = 15;
  private static final double NANOS = 1e9;

  private WordsSpeed() {}

  public static void main(String[] args) throws IOException {
    WordReader reader = new WordReader(Guides.read(Path.of("quillback-week", "guide.json")));
    List<Description> descriptions = new ArrayList<>();
    WordsCorpusTest.files().forEach(file -> descriptions.addAll(Description.read(file)));
    List<String> lines = new ArrayList<>();
    long readings = 0;
    for (int round = 0; round < ROUNDS; round++) {
      long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      int read = 0;
      while (read < 10_000) {
        for (Description description : descriptions) {
          readings += reader.read(description.words()).readings().size();
          read++;
        }
      }
      double seconds =
          (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / NANOS;
      lines.add(String.format(Locale.ROOT, "%.0f descriptions a second", read / seconds));
    }
    lines.add(readings + " readings in all");
    Files.write(Path.of(args[0]), lines);
  }
}
