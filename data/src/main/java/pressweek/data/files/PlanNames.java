package pressweek.data.files;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** How the components of a plan's records are called in {@code plan.json}. */
final class PlanNames {
  /**
   * Components that are a minute since 1970 and not a length of time; they are written as ISO 8601
   * times.
   */
  private static final Set<String> TIMES =
      Set.of(
          "availableFromMin",
          "dryFromMin",
          "dueMin",
          "earliestMin",
          "endMin",
          "expectedMin",
          "expiresMin",
          "fromMin",
          "madeMin",
          "needByMin",
          "readyMin",
          "receiptMin",
          "receivedMin",
          "requestedMin",
          "startMin",
          "toMin",
          "usableMin");

  private static final ClassValue<List<Named>> NAMED =
      new ClassValue<>() {
        @Override
        protected List<Named> computeValue(Class<?> type) {
          return Arrays.stream(type.getRecordComponents()).map(PlanNames::named).toList();
        }
      };

  /**
   * A component of a record and how it is written.
   *
   * @param component the component
   * @param key its key: its name in lower case with underscores, without the unit where it is a
   *     point in time
   * @param time true when it is a point in time
   */
  record Named(RecordComponent component, String key, boolean time) {}

  private PlanNames() {}

  /** The components of a record in their order. */
  static List<Named> of(Class<?> type) {
    return NAMED.get(type);
  }

  /** True when the component is a point in time. */
  static boolean time(RecordComponent component) {
    return TIMES.contains(component.getName());
  }

  private static Named named(RecordComponent component) {
    String name = component.getName();
    boolean time = time(component);
    String bare = time ? name.substring(0, name.length() - "Min".length()) : name;
    String key = bare.replaceAll("([a-z0-9])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
    return new Named(component, key, time);
  }
}
