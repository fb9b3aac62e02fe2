package pressweek.data.molding;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How threads are written. A metric thread without a pitch is the coarse one (ISO 261, ISO 262), so
 * {@code M8} and {@code M8x1.25} are the same; capitals and spaces do not matter.
 */
public final class ThreadSize {
  private static final Pattern METRIC =
      Pattern.compile("M(\\d+(?:\\.\\d+)?)(?:X(\\d+(?:\\.\\d+)?))?");

  /** Coarse pitches of ISO 261, mm. */
  private static final Map<String, String> COARSE =
      Map.of(
          "3", "0.5", "4", "0.7", "5", "0.8", "6", "1", "8", "1.25", "10", "1.5", "12", "1.75",
          "16", "2", "20", "2.5");

  private ThreadSize() {}

  /**
   * The thread in one spelling for comparing: {@code M8X1.25}, {@code 5/16-18UNC}; other text in
   * capitals without spaces.
   */
  public static String key(String thread) {
    String compact = thread.replace(" ", "").replace('×', 'x').toUpperCase(Locale.ROOT);
    Matcher metric = METRIC.matcher(compact);
    if (!metric.matches()) {
      return compact;
    }
    String size = metric.group(1);
    String pitch = metric.group(2);
    if (pitch == null) {
      String coarse = COARSE.get(size);
      return coarse == null ? compact : "M" + size + "X" + coarse;
    }
    return "M" + size + "X" + (pitch.contains(".") ? pitch.replaceFirst("\\.?0+$", "") : pitch);
  }

  /** True when both write the same thread. */
  public static boolean same(String a, String b) {
    return key(a).equals(key(b));
  }
}
