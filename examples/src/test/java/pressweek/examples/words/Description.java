package pressweek.examples.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import pressweek.data.words.Reading;

/**
 * A row of a file of descriptions.
 *
 * @param style how it is written
 * @param words the description
 * @param expected the item code that it means; or {@code ?} with the attributes that must be asked
 *     for; or {@code !} with those that contradict each other
 */
record Description(String style, String words, String expected) {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  static List<Description> read(Path file) {
    try (CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, FORMAT)) {
      return rows.stream()
          .map(
              row -> new Description(row.get("style"), row.get("description"), row.get("expected")))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** True when a reading gives the code, or asks or objects as it must. */
  boolean isRight(Reading reading) {
    if (expected.startsWith("?")) {
      return !reading.complete() && names(reading.questions());
    }
    if (expected.startsWith("!")) {
      return !reading.complete() && names(reading.conflicts());
    }
    return reading.complete() && reading.code().equals(expected);
  }

  /** True when there is a sentence, and each of the attributes is in one. */
  private boolean names(List<String> sentences) {
    String all = String.join("\n", sentences);
    return !sentences.isEmpty()
        && Arrays.stream(expected.substring(1).split("[ |,]+"))
            .map(attribute -> attribute.replaceFirst("_(mm|in)$", "").replace('_', ' '))
            .allMatch(all::contains);
  }

  /** True when a reading is wrong and does not say that it took anything for granted. */
  boolean isSilentlyWrong(Reading reading) {
    return !isRight(reading)
        && reading.assumed().isEmpty()
        && reading.questions().isEmpty()
        && reading.conflicts().isEmpty();
  }
}
