package pressweek.solver.audit;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A copy of a record that differs in one place, named by a path such as {@code
 * runs[R002].change.minutes} or {@code pulls[3].lot}.
 */
final class Edited {
  private static final Pattern STEP = Pattern.compile("(\\w+)(?:\\[([^]]+)])?(?:\\.(.+))?");

  private Edited() {}

  /** The record with another value at the path. */
  static <T> T set(T record, String path, Object value) {
    return edit(record, path, old -> value);
  }

  /** The record with a value at the path that follows from the one that is there. */
  static <T> T edit(T record, String path, UnaryOperator<Object> edit) {
    Matcher step = STEP.matcher(path);
    if (!step.matches()) {
      throw new IllegalArgumentException(path);
    }
    String key = step.group(2);
    String rest = step.group(3);
    UnaryOperator<Object> within = rest == null ? edit : inner -> edit(inner, rest, edit);
    return component(
        record, step.group(1), key == null ? within : list -> entry(list, key, within));
  }

  /** An edit of a list that leaves out the element at the index. */
  static UnaryOperator<Object> without(int index) {
    return list -> {
      List<Object> shorter = new ArrayList<>((List<?>) list);
      shorter.remove(index);
      return shorter;
    };
  }

  /** An edit of a list that puts an element at the index. */
  static UnaryOperator<Object> with(int index, Object element) {
    return list -> {
      List<Object> longer = new ArrayList<>((List<?>) list);
      longer.add(index, element);
      return longer;
    };
  }

  /** An edit that turns a list round. */
  static UnaryOperator<Object> reversed() {
    return list -> {
      List<Object> turned = new ArrayList<>((List<?>) list);
      Collections.reverse(turned);
      return turned;
    };
  }

  /** An edit of a map that gives a key another value. */
  static UnaryOperator<Object> put(Object key, Object value) {
    return map -> {
      Map<Object, Object> copy = new HashMap<>((Map<?, ?>) map);
      copy.put(key, value);
      return copy;
    };
  }

  private static Object entry(Object list, String key, UnaryOperator<Object> edit) {
    List<Object> copy = new ArrayList<>((List<?>) list);
    int index =
        key.matches("\\d+")
            ? Integer.parseInt(key)
            : copy.stream().map(Edited::id).toList().indexOf(key);
    copy.set(index, edit.apply(copy.get(index)));
    return copy;
  }

  private static Object id(Object element) {
    try {
      return element.getClass().getMethod("id").invoke(element);
    } catch (NoSuchMethodException none) {
      return read(element, element.getClass().getRecordComponents()[0]);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Object read(Object record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  @SuppressWarnings("unchecked")
  private static <T> T component(T record, String name, UnaryOperator<Object> edit) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    if (Arrays.stream(components).noneMatch(c -> c.getName().equals(name))) {
      throw new IllegalArgumentException(record.getClass() + " has no " + name);
    }
    Object[] values =
        Arrays.stream(components)
            .map(c -> c.getName().equals(name) ? edit.apply(read(record, c)) : read(record, c))
            .toArray();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return (T) record.getClass().getDeclaredConstructor(types).newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(record.getClass() + " " + name, e);
    }
  }
}
