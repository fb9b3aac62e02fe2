package pressweek.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import pressweek.data.files.Folder;
import pressweek.data.files.InputError;
import pressweek.data.files.InputFile;
import pressweek.data.week.Explainer;

/** A plant's folder of which the guide is wanted, a command's first argument. */
final class GuidedFolder {
  @picocli.CommandLine.Mixin private FolderArgument folder;

  /**
   * A folder and what explains its codes.
   *
   * @param folder the folder
   * @param explainer what explains its codes
   */
  record Guided(Folder folder, Explainer explainer) {}

  /** The folder with its guide; empty, and said on {@code err}, when it has none to be used. */
  Optional<Guided> read(PrintWriter err) {
    return folder.read(err).flatMap(read -> guided(read, err));
  }

  private static Optional<Guided> guided(Folder read, PrintWriter err) {
    Explainer explainer = new Explainer(read);
    explainer.findings().forEach(err::println);
    List<InputError> broken =
        read.errors().stream()
            .filter(error -> error.file().equals(InputFile.GUIDE.fileName()))
            .toList();
    broken.forEach(err::println);
    if (broken.isEmpty() && explainer.guide().isPresent()) {
      int errors = read.errors().size();
      if (errors > 0) {
        err.println("errors in the folder: " + errors + "; see pressweek check");
      }
      return Optional.of(new Guided(read, explainer));
    }
    boolean none = read.guide().isEmpty() && broken.isEmpty();
    err.println(
        none
            ? "guide.json is not there; without it an item code is only a name"
            : "guide.json cannot be used");
    return Optional.empty();
  }
}
