package pressweek.app.cli;

import java.io.PrintWriter;
import java.util.Optional;
import pressweek.data.files.Folder;
import pressweek.data.files.InputFile;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideReader;
import pressweek.data.week.Week;

/** The guide of a folder, for commands that are of no use without one. */
final class GuideOfFolder {
  private GuideOfFolder() {}

  /** The guide; empty, and said on {@code err}, when there is none that can be read. */
  static Optional<Guide> read(Folder folder, PrintWriter err) {
    folder.errors().stream()
        .filter(error -> error.file().equals(InputFile.GUIDE.fileName()))
        .forEach(err::println);
    GuideReader.Result result = Week.guide(folder);
    result.findings().forEach(err::println);
    if (folder.guide().isEmpty()) {
      err.println("guide.json: not there or not JSON; expected the guide to the plant's item code");
    } else if (result.guide().isEmpty()) {
      err.println("guide.json cannot be used");
    }
    return result.guide();
  }
}
