package pressweek.app.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Inputs that are not as they were when a plan was made. */
public final class ChangedInputs {
  private ChangedInputs() {}

  /** Names of files that changed, came or went. */
  public static List<String> of(Map<String, String> then, Map<String, String> now) {
    TreeSet<String> names = new TreeSet<>(then.keySet());
    names.addAll(now.keySet());
    names.remove(Replanner.PLAN_INPUT);
    names.remove(Replanner.EVENTS_INPUT);
    List<String> changed = new ArrayList<>();
    for (String name : names) {
      if (!then.getOrDefault(name, "").equals(now.getOrDefault(name, ""))) {
        changed.add(name);
      }
    }
    return changed;
  }

  /** The same in words: {@code orders.csv changed}. */
  public static List<String> words(Map<String, String> then, Map<String, String> now) {
    return of(then, now).stream()
        .map(
            n ->
                n
                    + (then.containsKey(n)
                        ? now.containsKey(n) ? " changed" : " is gone"
                        : " is new"))
        .toList();
  }
}
