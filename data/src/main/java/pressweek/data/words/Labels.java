package pressweek.data.words;

import java.util.Collection;
import java.util.List;

/** How attributes are named in questions. */
final class Labels {
  private Labels() {}

  /** An attribute in words: {@code head size} for {@code head_size_mm}. */
  static String of(String attribute) {
    String name = attribute;
    if (!unit(attribute).isEmpty()) {
      name = attribute.substring(0, attribute.length() - 3);
    }
    return name.replace('_', ' ');
  }

  /** A sentence with attributes named in words. */
  static String in(String sentence, Collection<String> attributes) {
    String named = sentence;
    for (String attribute : attributes) {
      named = named.replace(attribute, of(attribute));
    }
    return named.replace(" (said)", "");
  }

  /** The unit that an attribute's name ends with; empty when it has none. */
  static String unit(String attribute) {
    return attribute.endsWith("_mm") ? "mm" : attribute.endsWith("_in") ? "in" : "";
  }

  /** A value with its unit. */
  static String value(String attribute, String value) {
    return (value + " " + unit(attribute)).strip();
  }

  /** Values as in {@code 40, 50, 63 mm}. */
  static String values(String attribute, List<String> values) {
    return (String.join(", ", values) + " " + unit(attribute)).strip();
  }
}
