package pressweek.reports.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import pressweek.data.files.FolderReader;
import pressweek.data.guide.Guide;
import pressweek.data.week.Week;

/** The guides of the examples. */
final class ExampleGuide {
  private ExampleGuide() {}

  /** The demo plant's. */
  static Guide quillback() {
    return of("quillback-week");
  }

  /** One whose codes have fixed widths and fill characters. */
  static Guide brindlecote() {
    return of("guides/brindlecote");
  }

  static Guide of(String example) {
    try {
      return Week.guide(FolderReader.read(Path.of("../examples/" + example))).guide().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
