package pressweek.data.files;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A JSON value that knows the line in which it begins. */
public sealed interface JsonTree {
  /** Line in the file, from 1. */
  int line();

  /** The kind of value as a person calls it, for example {@code a list}. */
  String kind();

  /**
   * An object.
   *
   * @param line line
   * @param fields values by key, in the order of the file
   */
  record Obj(int line, Map<String, JsonTree> fields) implements JsonTree {
    public Obj {
      fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    /** The value of a key; empty when it is not there or null. */
    public Optional<JsonTree> field(String key) {
      return Optional.ofNullable(fields.get(key)).filter(v -> !(v instanceof Nothing));
    }

    @Override
    public String kind() {
      return "an object";
    }
  }

  /**
   * A list.
   *
   * @param line line
   * @param items values
   */
  record Arr(int line, List<JsonTree> items) implements JsonTree {
    public Arr {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "a list";
    }
  }

  /**
   * A text.
   *
   * @param line line
   * @param value text
   */
  record Text(int line, String value) implements JsonTree {
    @Override
    public String kind() {
      return "the text \"" + value + "\"";
    }
  }

  /**
   * A number.
   *
   * @param line line
   * @param value number as written
   */
  record Num(int line, BigDecimal value) implements JsonTree {
    @Override
    public String kind() {
      return "the number " + value;
    }
  }

  /**
   * True or false.
   *
   * @param line line
   * @param value which
   */
  record Bool(int line, boolean value) implements JsonTree {
    @Override
    public String kind() {
      return String.valueOf(value);
    }
  }

  /**
   * The value null, which counts as not given.
   *
   * @param line line
   */
  record Nothing(int line) implements JsonTree {
    @Override
    public String kind() {
      return "null";
    }
  }
}
