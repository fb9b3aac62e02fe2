package pressweek.data.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Trees of JSON taken apart and put together again, with the lines of their values. */
final class JsonLines {
  private JsonLines() {}

  /** The last line in which a value of the tree begins. */
  static int last(JsonTree tree) {
    int last = tree.line();
    if (tree instanceof JsonTree.Obj object) {
      for (JsonTree value : object.fields().values()) {
        last = Math.max(last, last(value));
      }
    } else if (tree instanceof JsonTree.Arr list) {
      for (JsonTree value : list.items()) {
        last = Math.max(last, last(value));
      }
    }
    return last;
  }

  /** The same tree some lines further down. */
  static JsonTree moved(JsonTree tree, int by) {
    int line = tree.line() + by;
    if (tree instanceof JsonTree.Obj object) {
      Map<String, JsonTree> fields = new LinkedHashMap<>();
      object.fields().forEach((key, value) -> fields.put(key, moved(value, by)));
      return new JsonTree.Obj(line, fields);
    }
    if (tree instanceof JsonTree.Arr list) {
      return new JsonTree.Arr(line, list.items().stream().map(v -> moved(v, by)).toList());
    }
    if (tree instanceof JsonTree.Text text) {
      return new JsonTree.Text(line, text.value());
    }
    if (tree instanceof JsonTree.Num number) {
      return new JsonTree.Num(line, number.value());
    }
    return tree instanceof JsonTree.Bool bool
        ? new JsonTree.Bool(line, bool.value())
        : new JsonTree.Nothing(line);
  }

  /** The value at a path of keys; empty when it is not there. */
  static Optional<JsonTree> at(JsonTree.Obj object, List<String> path) {
    Optional<JsonTree> value = object.field(path.get(0));
    if (path.size() == 1) {
      return value;
    }
    return value
        .filter(JsonTree.Obj.class::isInstance)
        .flatMap(v -> at((JsonTree.Obj) v, path.subList(1, path.size())));
  }

  /** The object with a value at a path of keys; what is missing on the way is made. */
  static JsonTree.Obj with(JsonTree.Obj object, List<String> path, JsonTree value) {
    String key = path.get(0);
    Map<String, JsonTree> fields = new LinkedHashMap<>(object.fields());
    if (path.size() == 1) {
      fields.put(key, value);
    } else {
      JsonTree.Obj inner =
          fields.get(key) instanceof JsonTree.Obj there
              ? there
              : new JsonTree.Obj(value.line(), Map.of());
      fields.put(key, with(inner, path.subList(1, path.size()), value));
    }
    return new JsonTree.Obj(object.line(), fields);
  }
}
