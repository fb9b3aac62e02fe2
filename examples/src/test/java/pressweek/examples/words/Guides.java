package pressweek.examples.words;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import pressweek.data.files.JsonReader;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideReader;

/** Guides of this module, without the rest of their folders. */
final class Guides {
  private Guides() {}

  static Guide read(Path file) {
    try (Reader text = Files.newBufferedReader(file)) {
      return GuideReader.read(
              JsonReader.read(file.getFileName().toString(), text).object().orElseThrow())
          .guide()
          .orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
