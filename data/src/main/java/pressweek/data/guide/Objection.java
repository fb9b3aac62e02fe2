package pressweek.data.guide;

import java.util.List;

/**
 * Why no code says what is known of an item.
 *
 * @param attributes attributes that do not go together; one when the value itself has no symbol
 * @param sentence the reason
 */
public record Objection(List<String> attributes, String sentence) {
  public Objection {
    attributes = List.copyOf(attributes);
  }
}
