package pressweek.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import pressweek.app.plan.Replanner;

/** Inputs that are not as they were when a plan was made. */
final class ChangedInputs {
  private ChangedInputs() {}

  /** Names of files that changed, came or went. */
  static List<String> of(Map<String, String> then, Map<String, String> now) {
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
}
