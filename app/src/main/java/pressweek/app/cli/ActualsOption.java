package pressweek.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.ActualRow;
import pressweek.data.files.ActualsFile;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;

/** What past runs took, as a command reads it. */
final class ActualsOption {
  private ActualsOption() {}

  /**
   * What runs took.
   *
   * @param file name of the file
   * @param rows the runs
   */
  record Runs(String file, List<ActualRow> rows) {
    Runs {
      rows = List.copyOf(rows);
    }
  }

  /**
   * The runs of a file; empty, and said on {@code err}, when they cannot be used.
   *
   * @param named the file that was named; empty for the one in the folder
   */
  static Optional<Runs> read(String named, Folder folder, PrintWriter err) throws IOException {
    Path file = named.isEmpty() ? inFolder(folder) : Path.of(named);
    if (!Files.isRegularFile(file)) {
      err.println(file + " is not there; expected what runs took (docs/learning.md)");
      return Optional.empty();
    }
    ActualsFile.Reading reading = ActualsFile.read(file, folder);
    reading.findings().forEach(err::println);
    return reading.errors().isEmpty()
        ? Optional.of(new Runs(String.valueOf(file.getFileName()), reading.rows()))
        : Optional.empty();
  }

  private static Path inFolder(Folder folder) {
    Path workbook = folder.path().resolve(InputFile.ACTUALS.workbookName());
    return Files.isRegularFile(workbook)
        ? workbook
        : folder.path().resolve(InputFile.ACTUALS.fileName());
  }
}
