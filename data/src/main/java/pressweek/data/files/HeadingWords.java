package pressweek.data.files;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What plants call the columns, from {@code headings.txt}. */
final class HeadingWords {
  private static final Map<String, List<String>> ALL = read();

  private HeadingWords() {}

  /**
   * The words for a column: its own name without the unit first, then what else it is called, all
   * of them plain.
   */
  static List<String> of(InputFile file, Column column) {
    String bare = bare(column);
    Stream<String> other = ALL.getOrDefault(key(file, bare), List.of()).stream();
    return Stream.concat(Stream.of(plain(bare)), other).distinct().toList();
  }

  /** The keys of the list, each {@code file.column}. */
  static List<String> keys() {
    return ALL.keySet().stream().sorted().toList();
  }

  /** The key of a column in the list. */
  static String key(InputFile file, Column column) {
    return key(file, bare(column));
  }

  private static String key(InputFile file, String bare) {
    return file.fileName().replace(".csv", ".") + bare;
  }

  private static String bare(Column column) {
    return column.unit().base(column.name());
  }

  /**
   * Words in lower case, with single blanks between them and without accents; umlauts as two
   * letters.
   */
  static String plain(String heading) {
    String german =
        heading
            .toLowerCase(Locale.ROOT)
            .replace("ä", "ae")
            .replace("ö", "oe")
            .replace("ü", "ue")
            .replace("ß", "ss");
    String bare = Normalizer.normalize(german, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    return bare.replaceAll("[^\\p{L}\\p{N}%°\"]+", " ").strip();
  }

  private static Map<String, List<String>> read() {
    Map<String, List<String>> all = new HashMap<>();
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(HeadingWords.class.getResourceAsStream("headings.txt")),
                StandardCharsets.UTF_8))) {
      for (String line :
          lines.lines().filter(l -> l.contains("=")).filter(l -> !l.startsWith("#")).toList()) {
        int sign = line.indexOf('=');
        all.put(line.substring(0, sign).strip(), words(line.substring(sign + 1)));
      }
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> words(String list) {
    return Arrays.stream(list.split(","))
        .map(HeadingWords::plain)
        .filter(w -> !w.isEmpty())
        .collect(Collectors.toList());
  }
}
