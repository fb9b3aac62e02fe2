package pressweek.app.sweep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;

/** Sweeps of the small plant in one process on SQLite. */
final class SmallSweep {
  static final Path SMALL = Path.of("../examples/quillback-small");
  static final int NOW = 29_000_000;

  private SmallSweep() {}

  static SweepReading.Read read(SweepFile file, Path... folders) {
    return SweepReading.read(file, List.of(folders), Path.of("."), NOW);
  }

  /** Sweeps on a store in a folder. */
  static Sweeping.Swept sweep(Path out, SweepReading.Read read)
      throws StoreTrouble, InterruptedException {
    Worker.Settings settings = new Worker.Settings("test", 2, Duration.ofSeconds(1));
    try (Store store = Store.open(out.resolve("sweep.db").toString());
        Worker worker = new Worker(store, settings)) {
      worker.start();
      return new Sweeping(store).sweep(read, progress -> {});
    }
  }

  static Map<String, String> bodies(Sweeping.Swept swept) {
    Map<String, String> bodies = new TreeMap<>();
    swept.results().forEach((task, result) -> bodies.put(task, result.body()));
    return bodies;
  }

  /** The files of the small plant. */
  static Path copy(Path folder) throws IOException {
    Path copy = folder.resolve("copy");
    Files.createDirectories(copy);
    try (Stream<Path> files = Files.list(SMALL)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, copy.resolve(file.getFileName().toString()));
      }
    }
    return copy;
  }

  /** The small plant with an uncertainty of its own. */
  static Path copy(Path folder, String uncertainty) throws IOException {
    Path copy = copy(folder);
    Path plant = copy.resolve("plant.json");
    String text = Files.readString(plant).strip();
    Files.writeString(
        plant,
        text.substring(0, text.length() - 1) + ", \"uncertainty\": {" + uncertainty + "}}\n");
    return copy;
  }
}
