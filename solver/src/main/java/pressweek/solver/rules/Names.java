package pressweek.solver.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.Job;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;

/** Numbers for the names of a problem. Tooling 0 and material 0 stand for "none or not known". */
public final class Names {
  /** A resin and a colour in it. */
  public record Material(String resin, String colour) {}

  private final Map<String, Integer> presses = new LinkedHashMap<>();
  private final Map<String, Integer> molds = new LinkedHashMap<>();
  private final Map<String, Integer> toolings = new LinkedHashMap<>();
  private final Map<String, Integer> resins = new LinkedHashMap<>();
  private final Map<Material, Integer> materials = new LinkedHashMap<>();
  private final Map<String, Integer> jobs = new LinkedHashMap<>();
  private final List<String> moldsList;
  private final List<String> toolingsList;
  private final List<Material> materialsList;

  public Names(Problem problem) {
    toolings.put("", 0);
    resins.put("", 0);
    materials.put(new Material("", ""), 0);
    for (Press press : problem.floor().presses()) {
      presses.put(press.id(), presses.size());
    }
    for (Mold mold : problem.floor().molds()) {
      molds.put(mold.id(), molds.size());
    }
    for (PressState state : problem.floor().states()) {
      add(state.setup().mold(), molds);
      add(state.setup().tooling(), toolings);
      add(state.setup().resin(), resins);
      materials.putIfAbsent(
          new Material(state.setup().resin(), state.setup().colour()), materials.size());
    }
    for (Job job : problem.jobs()) {
      jobs.put(job.id(), jobs.size());
      add(job.resin(), resins);
      materials.putIfAbsent(new Material(job.resin(), job.colour()), materials.size());
      for (Option option : job.options()) {
        add(option.tooling(), toolings);
      }
    }
    moldsList = list(molds);
    toolingsList = list(toolings);
    materialsList = list(materials);
  }

  private static void add(String name, Map<String, Integer> to) {
    if (!name.isEmpty() || to.containsKey("")) {
      to.putIfAbsent(name, to.size());
    }
  }

  public int press(String id) {
    return get(presses, id);
  }

  /** The number of a press, or -1 when there is none of that name. */
  public int pressOrNone(String id) {
    return presses.getOrDefault(id, -1);
  }

  public int mold(String id) {
    return get(molds, id);
  }

  public int tooling(String id) {
    return get(toolings, id);
  }

  public int resin(String id) {
    return get(resins, id);
  }

  public int material(String resin, String colour) {
    return get(materials, new Material(resin, colour));
  }

  /** The number of a job, or -1 when it is not to be planned. */
  public int job(String id) {
    return jobs.getOrDefault(id, -1);
  }

  /** All molds in the order of their numbers. */
  public List<String> molds() {
    return moldsList;
  }

  /** All toolings in the order of their numbers. */
  public List<String> toolings() {
    return toolingsList;
  }

  /** All materials in the order of their numbers. */
  public List<Material> materials() {
    return materialsList;
  }

  /** The names of a map in the order of their numbers. */
  private static <K> List<K> list(Map<K, Integer> map) {
    return List.copyOf(map.keySet());
  }

  private static <K> int get(Map<K, Integer> map, K key) {
    Integer number = map.get(key);
    if (number == null) {
      throw new IllegalArgumentException("unknown in the problem: " + key);
    }
    return number;
  }
}
