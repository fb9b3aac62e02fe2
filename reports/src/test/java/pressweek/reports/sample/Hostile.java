package pressweek.reports.sample;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A value in which every text has something hostile in front of it, so that ids still find each
 * other.
 */
public final class Hostile {
  private final String hostile;

  private Hostile(String hostile) {
    this.hostile = hostile;
  }

  /**
   * The value with the hostile text, which must have no slash, in front of each part between
   * slashes.
   */
  public static <T extends Record> T of(T value, String hostile) {
    @SuppressWarnings("unchecked")
    T changed = (T) new Hostile(hostile).change(value);
    return changed;
  }

  private Object change(Object value) {
    if (value instanceof String text) {
      return Arrays.stream(text.split("/", -1))
          .map(part -> hostile + part)
          .collect(Collectors.joining("/"));
    }
    if (value instanceof Record) {
      return changeRecord((Record) value);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(this::change).toList();
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(this::change);
    }
    if (value instanceof Map<?, ?> map) {
      Map<Object, Object> changed = new LinkedHashMap<>();
      map.forEach((k, v) -> changed.put(change(k), change(v)));
      return changed;
    }
    return value;
  }

  private Record changeRecord(Record value) {
    RecordComponent[] components = value.getClass().getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    Object[] parts = new Object[components.length];
    try {
      for (int i = 0; i < parts.length; i++) {
        parts[i] = change(components[i].getAccessor().invoke(value));
      }
      return (Record) value.getClass().getDeclaredConstructor(types).newInstance(parts);
    } catch (IllegalAccessException
        | InstantiationException
        | InvocationTargetException
        | NoSuchMethodException e) {
      throw new IllegalStateException("cannot rebuild " + value.getClass(), e);
    }
  }
}
