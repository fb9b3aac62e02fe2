package pressweek.data.files;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Writes records as JSON: a component is a key, an empty one is left out, sets and maps are in the
 * order of their elements, and points in time have the plant's offset.
 */
final class PlanWriter {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmXXX");

  /** Minutes from 1990 to 2199; others are not times that a person reads, and stay numbers. */
  static final int FIRST_MINUTE = 10_519_200;

  static final int LAST_MINUTE = 120_968_639;

  private final JsonGenerator out;
  private final ZoneId zone;

  PlanWriter(JsonGenerator out, ZoneId zone) {
    this.out = out;
    this.zone = zone;
  }

  /** Writes the components of a record into the object that is open. */
  void components(Record values) throws IOException {
    for (PlanNames.Named component : PlanNames.of(values.getClass())) {
      Optional<Object> value = present(get(values, component));
      if (value.isPresent()) {
        out.writeFieldName(component.key());
        write(component, value.get());
      }
    }
  }

  private static Object get(Record values, PlanNames.Named component) {
    try {
      return component.component().getAccessor().invoke(values);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("cannot read " + component, e);
    }
  }

  private static Optional<Object> present(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(v -> v);
    }
    if (value instanceof OptionalInt number) {
      return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
    }
    if (value instanceof OptionalDouble number) {
      return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
    }
    return Optional.of(value);
  }

  private void write(PlanNames.Named component, Object value) throws IOException {
    if (component.time() && value instanceof Integer minute) {
      time(minute);
    } else {
      write(value);
    }
  }

  /** Minute 0 stands for no time at all. */
  private void time(int minute) throws IOException {
    if (minute == 0) {
      out.writeString("");
    } else if (minute < FIRST_MINUTE || minute > LAST_MINUTE) {
      out.writeNumber(minute);
    } else {
      out.writeString(TIME.format(Instant.ofEpochSecond(60L * minute).atZone(zone)));
    }
  }

  private void write(Object value) throws IOException {
    if (value instanceof Record values) {
      out.writeStartObject();
      components(values);
      out.writeEndObject();
    } else if (value instanceof Collection<?> items) {
      list(items);
    } else if (value instanceof Map<?, ?> map) {
      map(map);
    } else if (value instanceof Integer number) {
      out.writeNumber(number);
    } else if (value instanceof Long number) {
      out.writeNumber(number);
    } else if (value instanceof Double number) {
      out.writeNumber(number);
    } else if (value instanceof Boolean bool) {
      out.writeBoolean(bool);
    } else {
      out.writeString(word(value));
    }
  }

  private void list(Collection<?> items) throws IOException {
    out.writeStartArray();
    for (Object item : items instanceof Set<?> set ? new TreeSet<Object>(set) : items) {
      write(item);
    }
    out.writeEndArray();
  }

  private void map(Map<?, ?> map) throws IOException {
    Map<String, Object> sorted = new TreeMap<>();
    map.forEach((key, value) -> sorted.put(word(key), value));
    out.writeStartObject();
    for (Map.Entry<String, Object> entry : sorted.entrySet()) {
      out.writeFieldName(entry.getKey());
      write(entry.getValue());
    }
    out.writeEndObject();
  }

  private static String word(Object value) {
    return value instanceof Enum<?> constant ? Columns.word(constant) : value.toString();
  }
}
