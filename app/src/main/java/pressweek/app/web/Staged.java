package pressweek.app.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import pressweek.data.files.InputFile;

/**
 * Files that somebody has laid beside the folder and not taken yet.
 *
 * @param files content by name, each known by {@link FileNames}
 */
record Staged(SortedMap<String, byte[]> files) {
  static final Staged NONE = new Staged(new TreeMap<>());

  Staged {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  /** These and others; a table that comes as a workbook takes the place of its text. */
  Staged with(SortedMap<String, byte[]> more) {
    SortedMap<String, byte[]> all = new TreeMap<>(files);
    more.forEach(
        (name, bytes) -> {
          FileNames.known(name).ifPresent(f -> all.keySet().removeAll(FileNames.names(f)));
          all.put(name, bytes);
        });
    return new Staged(all);
  }

  boolean isEmpty() {
    return files.isEmpty();
  }

  long bytes() {
    return files.values().stream().mapToLong(b -> b.length).sum();
  }

  /** What is done with a folder. */
  interface Work<T> {
    T on(Path folder) throws IOException;
  }

  /**
   * Does something with the folder as it would be with these files: a copy, which is gone
   * afterwards.
   */
  <T> T with(Path folder, Work<T> work) throws IOException {
    Path copy = Files.createTempDirectory("pressweek-folder");
    try {
      for (InputFile file : InputFile.values()) {
        boolean replaced = FileNames.names(file).stream().anyMatch(files::containsKey);
        for (String name : replaced ? List.<String>of() : FileNames.names(file)) {
          if (Files.isRegularFile(folder.resolve(name))) {
            Files.copy(folder.resolve(name), copy.resolve(name));
          }
        }
      }
      for (String name : files.keySet()) {
        Files.write(copy.resolve(name), content(name));
      }
      return work.on(copy);
    } finally {
      remove(copy);
    }
  }

  private byte[] content(String name) {
    return files.getOrDefault(name, new byte[0]);
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
