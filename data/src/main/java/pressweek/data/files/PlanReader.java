package pressweek.data.files;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Builds records from the JSON that {@link PlanWriter} writes. */
final class PlanReader {
  /** What is wrong with a plan file, and where. */
  static final class Wrong extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;

    Wrong(int line, String message) {
      super(message);
      this.line = line;
    }

    int line() {
      return line;
    }
  }

  /** Reads a value of one type. */
  private interface Reader<T> {
    T read(String text);
  }

  private PlanReader() {}

  /**
   * A record of the type from an object. Keys that it does not know are left out.
   *
   * @param path path of the object, for messages
   */
  static <R> R record(Class<R> type, JsonTree.Obj object, String path) throws Wrong {
    List<PlanNames.Named> components = PlanNames.of(type);
    Object[] values = new Object[components.size()];
    Class<?>[] types = new Class<?>[values.length];
    for (int i = 0; i < values.length; i++) {
      PlanNames.Named named = components.get(i);
      String key = named.key();
      values[i] = component(named, object, path.isEmpty() ? key : path + "." + key);
      types[i] = named.component().getType();
    }
    try {
      return type.getDeclaredConstructor(types).newInstance(values);
    } catch (InvocationTargetException e) {
      // The record itself refused its components.
      Throwable cause = e.getCause();
      String refusal = cause == null ? "cannot be" : String.valueOf(cause.getMessage());
      throw new Wrong(object.line(), path + ": " + refusal + "; expected what a planner writes");
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot make " + type, e);
    }
  }

  private static Object component(PlanNames.Named named, JsonTree.Obj object, String path)
      throws Wrong {
    RecordComponent component = named.component();
    Optional<JsonTree> value = object.field(named.key());
    Class<?> type = component.getType();
    boolean time = named.time();
    if (type == OptionalInt.class) {
      return value.isEmpty()
          ? OptionalInt.empty()
          : OptionalInt.of(minuteOrInt(value.get(), time, path));
    }
    if (type == OptionalDouble.class) {
      return value.isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(number(value.get(), path).doubleValue());
    }
    if (type == Optional.class) {
      return value.isEmpty()
          ? Optional.empty()
          : Optional.of(value(argument(component.getGenericType(), 0), value.get(), path));
    }
    if (value.isEmpty()) {
      throw new Wrong(object.line(), "key \"" + path + "\" missing; expected it");
    }
    return time
        ? minuteOrInt(value.get(), true, path)
        : value(component.getGenericType(), value.get(), path);
  }

  private static Type argument(Type type, int index) {
    return ((ParameterizedType) type).getActualTypeArguments()[index];
  }

  private static Object value(Type type, JsonTree value, String path) throws Wrong {
    if (type instanceof ParameterizedType generic) {
      return generic(generic, value, path);
    }
    Class<?> plain = (Class<?>) type;
    if (plain.isRecord()) {
      if (value instanceof JsonTree.Obj object) {
        return record(plain, object, path);
      }
      throw wrong(value, path, "an object");
    }
    if (plain == int.class) {
      return whole(value, path, Integer.MIN_VALUE, Integer.MAX_VALUE).intValue();
    }
    if (plain == long.class || plain == Long.class) {
      return whole(value, path, Long.MIN_VALUE, Long.MAX_VALUE).longValue();
    }
    if (plain == double.class) {
      return number(value, path).doubleValue();
    }
    if (plain == boolean.class) {
      if (value instanceof JsonTree.Bool bool) {
        return bool.value();
      }
      throw wrong(value, path, "true or false");
    }
    return word(plain, value, path);
  }

  private static Object generic(ParameterizedType type, JsonTree value, String path) throws Wrong {
    if (type.getRawType() == Map.class) {
      return map(type, value, path);
    }
    if (!(value instanceof JsonTree.Arr list)) {
      throw wrong(value, path, "a list");
    }
    List<Object> items = new ArrayList<>();
    for (JsonTree item : list.items()) {
      items.add(value(argument(type, 0), item, path + "[" + items.size() + "]"));
    }
    return type.getRawType() == Set.class ? new LinkedHashSet<>(items) : items;
  }

  private static Map<Object, Object> map(ParameterizedType type, JsonTree value, String path)
      throws Wrong {
    if (!(value instanceof JsonTree.Obj object)) {
      throw wrong(value, path, "an object");
    }
    Map<Object, Object> map = new LinkedHashMap<>();
    for (Map.Entry<String, JsonTree> entry : object.fields().entrySet()) {
      String inner = path + "." + entry.getKey();
      Object key =
          word(
              (Class<?>) argument(type, 0),
              new JsonTree.Text(object.line(), entry.getKey()),
              inner);
      map.put(key, value(argument(type, 1), entry.getValue(), inner));
    }
    return map;
  }

  private static Object word(Class<?> type, JsonTree value, String path) throws Wrong {
    if (!(value instanceof JsonTree.Text text)) {
      throw wrong(value, path, "a text");
    }
    if (type == String.class) {
      return text.value();
    }
    if (type.isEnum()) {
      for (Object constant : type.getEnumConstants()) {
        if (Columns.word((Enum<?>) constant).equals(text.value())) {
          return constant;
        }
      }
      throw wrong(
          value,
          path,
          "one of " + String.join(", ", Columns.words((Enum<?>[]) type.getEnumConstants())));
    }
    if (type == LocalTime.class) {
      return parsed(text, path, "a time of day", LocalTime::parse);
    }
    if (type == LocalDate.class) {
      return parsed(text, path, "a date", LocalDate::parse);
    }
    if (type == ZoneId.class) {
      return parsed(text, path, "a time zone", ZoneId::of);
    }
    throw new IllegalStateException("no plan has a " + type);
  }

  private static <T> T parsed(JsonTree.Text text, String path, String expected, Reader<T> reader)
      throws Wrong {
    try {
      return reader.read(text.value());
    } catch (DateTimeException e) {
      throw wrong(text, path, expected);
    }
  }

  private static int minuteOrInt(JsonTree value, boolean time, String path) throws Wrong {
    if (!time || !(value instanceof JsonTree.Text text)) {
      return whole(value, path, Integer.MIN_VALUE, Integer.MAX_VALUE).intValue();
    }
    if (text.value().isEmpty()) {
      return 0;
    }
    long minute =
        parsed(
            text, path, "a time with an offset", t -> OffsetDateTime.parse(t).toEpochSecond() / 60);
    if (minute < PlanWriter.FIRST_MINUTE || minute > PlanWriter.LAST_MINUTE) {
      throw wrong(value, path, Times.years());
    }
    return (int) minute;
  }

  private static BigDecimal whole(JsonTree value, String path, long least, long most) throws Wrong {
    BigDecimal number = number(value, path);
    boolean within =
        number.compareTo(BigDecimal.valueOf(least)) >= 0
            && number.compareTo(BigDecimal.valueOf(most)) <= 0;
    if (!within || number.scale() > 0) {
      throw wrong(value, path, "a whole number");
    }
    return number;
  }

  private static BigDecimal number(JsonTree value, String path) throws Wrong {
    if (value instanceof JsonTree.Num number) {
      return number.value();
    }
    throw wrong(value, path, "a number");
  }

  private static Wrong wrong(JsonTree value, String path, String expected) {
    return new Wrong(value.line(), path + " is " + value.kind() + "; expected " + expected);
  }
}
