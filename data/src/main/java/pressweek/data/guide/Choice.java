package pressweek.data.guide;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Something that may be written for a field.
 *
 * @param text as it stands in the code
 * @param symbol what it is without what fills it up; empty where fill characters stand alone
 * @param sets values by attribute; an empty value is: does not apply
 * @param line line of the guide that says so
 */
public record Choice(String text, String symbol, Map<String, String> sets, int line) {
  public Choice {
    sets = Collections.unmodifiableMap(new LinkedHashMap<>(sets));
  }
}
