package pressweek.examples.guides;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pressweek.data.files.InputError;
import pressweek.data.files.JsonReader;
import pressweek.data.files.JsonReading;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideReader;

/** The guide files of this module and of the page about them. */
final class GuideFiles {
  private static final Pattern JSON_BLOCK = Pattern.compile("(?s)```json\n(.*?)```");

  private GuideFiles() {}

  /** Folders with a guide, from the module's own folder. */
  static List<Path> folders() {
    return Stream.of(Path.of(""), Path.of("guides"))
        .flatMap(GuideFiles::children)
        .filter(folder -> Files.exists(folder.resolve("guide.json")))
        .sorted()
        .toList();
  }

  /** Folders with codes that must and must not be read. */
  static List<Path> foldersWithCodes() {
    return folders().stream().filter(folder -> Files.exists(folder.resolve("codes.csv"))).toList();
  }

  /** Whole guides of {@code docs/guide-files.md}, in the order of the page. */
  static List<String> guidesOfThePage() {
    return JSON_BLOCK
        .matcher(text(page()))
        .results()
        .map((MatchResult block) -> block.group(1))
        .filter(json -> json.contains("\"schema\""))
        .toList();
  }

  /** The guide of a folder. */
  static Guide guide(Path folder) {
    return read(text(folder.resolve("guide.json"))).guide().orElseThrow();
  }

  /** Everything that the reader of guides finds wrong with one. */
  static List<String> findings(String json) {
    return read(json).findings().stream().map(InputError::toString).toList();
  }

  private static GuideReader.Result read(String json) {
    try {
      JsonReading reading = JsonReader.read("guide.json", new StringReader(json));
      return GuideReader.read(reading.object().orElseThrow());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path page() {
    return Path.of("..", "docs", "guide-files.md");
  }

  static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<Path> children(Path folder) {
    try (Stream<Path> children = Files.list(folder)) {
      return children.filter(Files::isDirectory).toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
