package pressweek.data.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the words do not say, or not exactly, and the reading takes all the same.
 *
 * @param means values by attribute
 * @param because the reason
 */
public record Assumed(Map<String, String> means, String because) {
  public Assumed {
    means = Collections.unmodifiableMap(new LinkedHashMap<>(means));
  }
}
