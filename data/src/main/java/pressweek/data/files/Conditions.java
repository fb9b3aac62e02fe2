package pressweek.data.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads conditions on the attributes of an item: values separated by {@code |}, or a list of them.
 */
final class Conditions {
  private Conditions() {}

  /**
   * The condition that an object says.
   *
   * @param path path of the object, for messages
   */
  static PlantRow.Condition read(JsonFields.Notes notes, String path, JsonTree.Obj object) {
    Map<String, List<String>> attributes = new HashMap<>();
    object
        .fields()
        .forEach((name, value) -> attributes.put(name, values(notes, path + "." + name, value)));
    return new PlantRow.Condition(attributes);
  }

  private static List<String> values(JsonFields.Notes notes, String path, JsonTree value) {
    List<JsonTree> items = value instanceof JsonTree.Arr list ? list.items() : List.of(value);
    List<String> values = new ArrayList<>();
    for (JsonTree item : items) {
      String text = text(item);
      if (text.isEmpty()) {
        notes.error(
            item.line(), path, path + " is " + item.kind() + "; expected values of the attribute");
      }
      values.addAll(split(text));
    }
    return values;
  }

  private static List<String> split(String text) {
    return java.util.Arrays.stream(text.split("\\|"))
        .map(String::strip)
        .filter(t -> !t.isEmpty())
        .toList();
  }

  private static String text(JsonTree value) {
    if (value instanceof JsonTree.Text text) {
      return text.value().strip();
    }
    if (value instanceof JsonTree.Num number) {
      return number.value().toString();
    }
    return value instanceof JsonTree.Bool bool ? String.valueOf(bool.value()) : "";
  }
}
