package pressweek.examples.speed;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** All descriptions of {@code examples/words}. */
final class Descriptions {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private Descriptions() {}

  static List<String> all() {
    List<String> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("words"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".csv")).sorted().toList()) {
        try (CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, FORMAT)) {
          for (CSVRecord row : rows) {
            all.add(row.get("description"));
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }
}
