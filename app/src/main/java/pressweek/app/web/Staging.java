package pressweek.app.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pressweek.data.files.AtomicFile;
import pressweek.data.files.InputFile;

/**
 * Where files lie that people have brought and not taken yet, for each of them apart. They are held
 * in memory and gone when the program ends. For use by several threads.
 */
final class Staging {
  /** Bytes that one person may have lying here. */
  static final long MOST_BYTES = 50_000_000;

  /** Where replaced files are kept in the folder. */
  static final String REPLACED = "replaced";

  /** People who may have files lying here; who came first makes room. */
  private static final int MOST_PEOPLE = 4;

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

  private final Path folder;
  private final Map<String, Staged> byPerson = new LinkedHashMap<>();

  Staging(Path folder) {
    this.folder = folder;
  }

  /** What lies here of somebody. */
  synchronized Staged of(String person) {
    return byPerson.getOrDefault(person, Staged.NONE);
  }

  /**
   * Lays files beside the folder.
   *
   * @return false when they are too many bytes together with those that lie here; then nothing is
   *     laid
   */
  synchronized boolean lay(String person, SortedMap<String, byte[]> files) {
    Staged all = of(person).with(files);
    if (all.bytes() > MOST_BYTES) {
      return false;
    }
    byPerson.remove(person);
    byPerson.put(person, all);
    if (byPerson.size() > MOST_PEOPLE) {
      byPerson.remove(byPerson.keySet().iterator().next());
    }
    return true;
  }

  /** Forgets what lies here of somebody. */
  synchronized Staged discard(String person) {
    Staged gone = of(person);
    byPerson.remove(person);
    return gone;
  }

  /**
   * Puts somebody's files into the folder, each as a whole; what they replace is kept. When that
   * fails they go on lying here.
   */
  synchronized Staged take(String person, Instant at) throws IOException {
    Staged staged = of(person);
    put(staged, at);
    return discard(person);
  }

  /** Puts files into the folder; those that they replace are copied first. */
  synchronized void put(Staged staged, Instant at) throws IOException {
    SortedMap<String, Path> replaced = new TreeMap<>();
    for (String name : staged.files().keySet()) {
      for (String old : FileNames.known(name).map(FileNames::names).orElseThrow()) {
        if (Files.isRegularFile(folder.resolve(old))) {
          replaced.put(old, folder.resolve(old));
        }
      }
    }
    if (!replaced.isEmpty()) {
      Path kept = fresh(at);
      for (Map.Entry<String, Path> old : replaced.entrySet()) {
        AtomicFile.write(kept.resolve(old.getKey()), Files.readAllBytes(old.getValue()));
      }
    }
    for (Map.Entry<String, byte[]> file : staged.files().entrySet()) {
      AtomicFile.write(folder.resolve(file.getKey()), file.getValue());
      replaced.remove(file.getKey());
    }
    for (Path other : replaced.values()) {
      Files.delete(other);
    }
  }

  /** Keeps the mapping of headings that is there, before it is written anew. */
  synchronized void keepHeadings(Instant at) throws IOException {
    Path headings = folder.resolve(InputFile.HEADINGS.fileName());
    if (Files.isRegularFile(headings)) {
      Path kept = fresh(at).resolve(InputFile.HEADINGS.fileName());
      AtomicFile.write(kept, Files.readAllBytes(headings));
    }
  }

  /** A folder of this moment that is not there yet. */
  private Path fresh(Instant at) throws IOException {
    String name = TIME.format(at);
    Path kept = folder.resolve(REPLACED).resolve(name);
    for (int i = 2; Files.exists(kept); i++) {
      kept = folder.resolve(REPLACED).resolve(name + "-" + i);
    }
    return Files.createDirectories(kept);
  }
}
