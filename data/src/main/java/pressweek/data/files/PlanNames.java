package pressweek.data.files;

import java.lang.reflect.RecordComponent;
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

  private PlanNames() {}

  /** True when the component is a point in time. */
  static boolean time(RecordComponent component) {
    return TIMES.contains(component.getName());
  }

  /**
   * The key of a component: its name in lower case with underscores, without the unit where it is a
   * point in time.
   */
  static String key(RecordComponent component) {
    String name = component.getName();
    String bare = time(component) ? name.substring(0, name.length() - "Min".length()) : name;
    return bare.replaceAll("([a-z0-9])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
  }
}
