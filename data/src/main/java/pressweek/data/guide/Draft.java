package pressweek.data.guide;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A code for what is known of an item, as far as that settles it.
 *
 * @param code the code, with {@code ?} where a field is open
 * @param family kind of item
 * @param attributes everything that it says, with what follows by rules and defaults
 * @param gaps open fields
 * @param implied attributes that were not known and are said since the code offers nothing else
 */
public record Draft(
    String code,
    String family,
    Map<String, String> attributes,
    List<Gap> gaps,
    Set<String> implied) {
  public Draft {
    attributes = Collections.unmodifiableMap(new LinkedHashMap<>(attributes));
    gaps = List.copyOf(gaps);
    implied = Set.copyOf(implied);
  }

  /**
   * An open field.
   *
   * @param field its name
   * @param attributes attributes that would have to be known
   * @param choices what could stand there; the first few, or the range of a number
   */
  public record Gap(String field, List<String> attributes, List<String> choices) {
    public Gap {
      attributes = List.copyOf(attributes);
      choices = List.copyOf(choices);
    }
  }

  /** True when nothing is open. */
  public boolean complete() {
    return gaps.isEmpty();
  }
}
