package pressweek.examples.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pressweek.data.guide.Guide;
import pressweek.data.words.Reading;
import pressweek.data.words.WordReader;

/**
 * Descriptions of items in customers' words, each file of {@code examples/words} by itself: nearly
 * all must be read right at once, and none may be read wrong without a word.
 */
class WordsCorpusTest {
  private static final double LEAST_SHARE = 0.95;

  private static final Guide GUIDE = Guides.read(Path.of("quillback-week", "guide.json"));
  private static final WordReader READER = new WordReader(GUIDE);

  static List<Path> files() {
    try (Stream<Path> files = Files.list(Path.of("words"))) {
      return files.filter(file -> file.toString().endsWith(".csv")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void nearlyAllAreReadRight(Path file, TestReporter reporter) {
    List<Description> all = Description.read(file);
    List<String> misses =
        all.stream()
            .filter(description -> !description.isRight(best(description)))
            .map(description -> miss(description, best(description)))
            .toList();
    double share = 1 - misses.size() / (double) all.size();
    reporter.publishEntry(
        file.getFileName().toString(),
        "%d of %d right%n%s"
            .formatted(all.size() - misses.size(), all.size(), String.join("\n", misses)));
    assertThat(share).as(String.join("\n", misses)).isGreaterThanOrEqualTo(LEAST_SHARE);
  }

  @ParameterizedTest
  @MethodSource("files")
  void noneIsWrongWithoutAWord(Path file) {
    assertThat(Description.read(file))
        .filteredOn(description -> description.isSilentlyWrong(best(description)))
        .extracting(description -> miss(description, best(description)))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void wholeReadingsAreCodesInTheGuidesOwnSpelling(Path file) {
    for (Description description : Description.read(file)) {
      for (Reading reading : READER.read(description.words()).readings()) {
        if (reading.complete()) {
          assertThat(GUIDE.encoder().canonical(reading.code())).isEqualTo(reading.code());
          assertThat(GUIDE.decode(reading.code()).good()).isTrue();
        }
      }
    }
  }

  private static Reading best(Description description) {
    return READER.read(description.words()).readings().get(0);
  }

  private static String miss(Description description, Reading reading) {
    return "%s: \"%s\": %s; expected %s%n    assumed %s%n    not understood %s, asked %s, against %s"
        .formatted(
            description.style(),
            description.words(),
            reading.code(),
            description.expected(),
            reading.assumed(),
            reading.notUnderstood(),
            reading.questions(),
            reading.conflicts());
  }
}
