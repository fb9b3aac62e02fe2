package pressweek.data.files;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;

/** Makes records with every component filled at random, whatever components they have. */
final class RandomRecords {
  private static final String LETTERS = "abcXYZ019 /-\"\\\n\u00e9\u20ac";
  private static final List<String> ZONES =
      List.of("UTC", "Europe/Berlin", "America/St_Johns", "Asia/Kathmandu");

  private final Random random;

  RandomRecords(long seed) {
    random = new Random(seed);
  }

  /** A record that its own constructor accepts. */
  <R> R record(Class<R> type) {
    RecordComponent[] components = type.getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    for (int attempt = 0; attempt < 100; attempt++) {
      Object[] values = Arrays.stream(components).map(this::component).toArray();
      try {
        return type.getDeclaredConstructor(types).newInstance(values);
      } catch (InvocationTargetException e) {
        assert e.getCause() instanceof IllegalArgumentException : e;
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }
    throw new IllegalStateException("no " + type + " found that it accepts");
  }

  private Object component(RecordComponent component) {
    boolean time = PlanNames.time(component);
    if (component.getType() == OptionalInt.class) {
      return random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(whole(time));
    }
    return component.getType() == int.class ? whole(time) : value(component.getGenericType());
  }

  private int whole(boolean time) {
    int most = time ? PlanWriter.LAST_MINUTE - PlanWriter.FIRST_MINUTE : 1_000_000;
    boolean none = random.nextInt(5) == 0;
    return none ? 0 : random.nextInt(most) + (time ? PlanWriter.FIRST_MINUTE : 0);
  }

  private Object value(Type type) {
    if (type instanceof ParameterizedType generic) {
      return generic(generic);
    }
    Class<?> plain = (Class<?>) type;
    if (plain.isRecord()) {
      return record(plain);
    }
    if (plain.isEnum()) {
      return plain.getEnumConstants()[random.nextInt(plain.getEnumConstants().length)];
    }
    return switch (plain.getSimpleName()) {
      case "String" -> text();
      case "int" -> whole(false);
      case "long", "Long" -> random.nextLong();
      case "double" -> random.nextDouble() * 1e6;
      case "boolean" -> random.nextBoolean();
      case "OptionalDouble" ->
          random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(random.nextGaussian());
      case "LocalTime" -> LocalTime.ofSecondOfDay(60L * random.nextInt(1440));
      case "LocalDate" -> LocalDate.ofEpochDay(random.nextInt(40_000));
      case "ZoneId" -> ZoneId.of(ZONES.get(random.nextInt(ZONES.size())));
      default -> throw new IllegalStateException("no random " + type);
    };
  }

  private Object generic(ParameterizedType type) {
    if (type.getRawType() == Optional.class) {
      return random.nextBoolean() ? Optional.empty() : Optional.of(argument(type, 0));
    }
    int size = random.nextInt(4);
    if (type.getRawType() == Map.class) {
      Map<Object, Object> map = new LinkedHashMap<>();
      for (int i = 0; i < size; i++) {
        map.put(argument(type, 0), argument(type, 1));
      }
      return map;
    }
    List<Object> items = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      items.add(argument(type, 0));
    }
    return type.getRawType() == Set.class ? new LinkedHashSet<>(items) : items;
  }

  private Object argument(ParameterizedType type, int index) {
    return value(type.getActualTypeArguments()[index]);
  }

  private String text() {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(8); i > 0; i--) {
      text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    return text.toString();
  }
}
