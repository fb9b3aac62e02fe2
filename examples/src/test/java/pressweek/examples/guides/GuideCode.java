package pressweek.examples.guides;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A row of a {@code codes.csv}.
 *
 * @param code an item code
 * @param good true when it must be read
 * @param meaning what it means, or what is wrong with it, in words
 * @param attributes everything that a good code says
 * @param expect a fragment of the message about a bad code
 * @param at character at which a bad code goes wrong, from 1; 0 when the guide's rules forbid it
 * @param sameAs another code for the same item; empty for none
 */
record GuideCode(
    String code,
    boolean good,
    String meaning,
    Map<String, String> attributes,
    String expect,
    int at,
    String sameAs) {
  GuideCode {
    attributes = Map.copyOf(attributes);
  }

  /** The rows of the {@code codes.csv} of a folder. */
  static List<GuideCode> read(Path folder) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(folder.resolve("codes.csv"), StandardCharsets.UTF_8, format)) {
      return parser.stream().map(GuideCode::of).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static GuideCode of(CSVRecord row) {
    String at = row.get("at");
    return new GuideCode(
        row.get("code"),
        row.get("good").equals("yes"),
        row.get("meaning"),
        pairs(row.get("attributes")),
        row.get("expect"),
        at.isEmpty() ? 0 : Integer.parseInt(at),
        row.get("same_as"));
  }

  private static Map<String, String> pairs(String text) {
    Map<String, String> pairs = new TreeMap<>();
    for (String pair : text.isEmpty() ? new String[0] : text.split("; ")) {
      int equals = pair.indexOf('=');
      pairs.put(pair.substring(0, equals), pair.substring(equals + 1));
    }
    return pairs;
  }

  @Override
  public String toString() {
    return code + " (" + meaning + ")";
  }
}
