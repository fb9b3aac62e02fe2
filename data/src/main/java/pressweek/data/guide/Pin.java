package pressweek.data.guide;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A part of a code that is to be written in a certain way.
 *
 * @param part index of the part in its family, from 0
 * @param form index of the form in its part, from 0
 * @param choices what is written for its fields, by their index among the form's pieces; fields
 *     that are not named are open
 */
public record Pin(int part, int form, Map<Integer, Choice> choices) {
  public Pin {
    choices = Collections.unmodifiableMap(new TreeMap<>(choices));
  }
}
