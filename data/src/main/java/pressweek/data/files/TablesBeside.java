package pressweek.data.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.table.FileScan;

/** Tables that may lie beside a plant's folder and are written as its own are. */
final class TablesBeside {
  private TablesBeside() {}

  /**
   * What reads such a table, with the headings and the date format of the folder.
   *
   * @param file the table, wherever it lies
   * @param folder the plant's folder
   * @param findings to which it adds what is wrong
   */
  static TableReader reader(Path file, Folder folder, Findings findings) throws IOException {
    Map<InputFile, Map<String, String>> own = headings(folder);
    Times times = Times.of(folder.plant().hours().dateFormat()).orElse(Times.iso());
    Path parent = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(folder.path());
    return new TableReader(InputFiles.in(parent), own, times, findings);
  }

  /** The plant's own headings by file. */
  static Map<InputFile, Map<String, String>> headings(Folder folder) throws IOException {
    if (!folder.has(InputFile.HEADINGS)) {
      return Map.of();
    }
    Path headings = folder.path().resolve(InputFile.HEADINGS.fileName());
    return HeadingsFile.of(
        JsonReader.read(headings, FileScan.of(headings)).object(), new Findings());
  }
}
