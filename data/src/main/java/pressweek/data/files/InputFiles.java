package pressweek.data.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import pressweek.data.files.table.FileScan;

/** The files that stand in a folder, and what is known of their bytes. */
final class InputFiles {
  private final Path folder;
  private final SortedSet<String> names;
  private final SortedMap<String, String> hashes = new TreeMap<>();

  private InputFiles(Path folder, SortedSet<String> names) {
    this.folder = folder;
    this.names = names;
  }

  /** Lists a folder. */
  static InputFiles in(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NotDirectoryException(folder.toString());
    }
    SortedSet<String> names = new TreeSet<>();
    try (Stream<Path> paths = Files.list(folder)) {
      paths.filter(Files::isRegularFile).forEach(p -> names.add(p.getFileName().toString()));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return new InputFiles(folder, names);
  }

  /**
   * The real names under which a file stands here: none, one, or for a table both its CSV and its
   * workbook.
   */
  List<String> named(InputFile file) {
    List<String> found = new ArrayList<>();
    for (String name : List.of(file.fileName(), file.workbookName())) {
      if (names.contains(name) && !found.contains(name)) {
        found.add(name);
      }
    }
    return found;
  }

  /** The place of a file. */
  Path path(String name) {
    return folder.resolve(name);
  }

  /** Looks at the bytes of a file and keeps its hash. */
  FileScan scan(String name) throws IOException {
    FileScan scan = FileScan.of(path(name));
    hashes.put(name, scan.sha256());
    return scan;
  }

  /** SHA-256 of every file that was looked at, by name. */
  SortedMap<String, String> hashes() {
    return hashes;
  }

  /** Warns of tables that nobody reads, with the name that may have been meant. */
  void warnOfOthers(Findings findings) {
    List<String> known = new ArrayList<>();
    for (InputFile file : InputFile.values()) {
      known.add(file.fileName());
      known.add(file.workbookName());
    }
    for (String name : names) {
      if (!known.contains(name) && looksLikeTable(name)) {
        findings.warning(
            new At(name, 0), "the file is not read; " + cure(name.toLowerCase(Locale.ROOT), known));
      }
    }
  }

  /**
   * True for tables, but not for what programs leave beside them, such as the lock of an open
   * workbook.
   */
  private static boolean looksLikeTable(String name) {
    boolean hidden = name.startsWith(".") || name.startsWith("~");
    String lower = name.toLowerCase(Locale.ROOT);
    return !hidden && (lower.endsWith(".csv") || lower.endsWith(".xlsx") || lower.endsWith(".xls"));
  }

  private static String cure(String name, Collection<String> known) {
    if (name.endsWith(".xls") && known.contains(name + "x")) {
      return "expected it saved as " + name + "x";
    }
    Optional<String> nearest = Nearest.of(name, known);
    return nearest
        .map(n -> "did you mean " + n + "?")
        .orElse("expected a name that the documentation lists");
  }
}
