package pressweek.data.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A piece of the words that means something.
 *
 * @param start its first character, from 0
 * @param end the character after it
 * @param text as it was written; where it was not taken letter by letter, also what it was read as
 * @param means values by attribute; {@code quantity} for a number of pieces; a value that was said
 *     not to be wanted has {@code not} before it
 */
public record Understood(int start, int end, String text, Map<String, String> means) {
  public Understood {
    means = Collections.unmodifiableMap(new LinkedHashMap<>(means));
  }
}
