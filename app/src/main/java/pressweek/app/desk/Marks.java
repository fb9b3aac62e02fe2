package pressweek.app.desk;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a scheduler has set for lines of the week, beside the plan.
 *
 * @param held lines that stay where they are though they are not promised to the floor
 * @param leftOut lines that are left out by hand, with the reason
 */
public record Marks(Set<String> held, Map<String, String> leftOut) {
  /** Nothing set. */
  public static final Marks NONE = new Marks(Set.of(), Map.of());

  public Marks {
    held = Collections.unmodifiableSet(new TreeSet<>(held));
    leftOut = Collections.unmodifiableMap(new TreeMap<>(leftOut));
  }

  Marks withHeld(Set<String> lines) {
    Set<String> all = new TreeSet<>(held);
    all.addAll(lines);
    return new Marks(all, leftOut);
  }

  Marks withoutHeld(Set<String> lines) {
    Set<String> rest = new TreeSet<>(held);
    rest.removeAll(lines);
    return new Marks(rest, leftOut);
  }

  Marks withLeftOut(String line, String reason) {
    Map<String, String> all = new TreeMap<>(leftOut);
    all.put(line, reason);
    return new Marks(held, all);
  }

  Marks takenIn(String line) {
    Map<String, String> rest = new TreeMap<>(leftOut);
    rest.remove(line);
    return new Marks(held, rest);
  }

  /** Only marks of these lines. */
  Marks of(Set<String> lines) {
    Set<String> heldOnes = new TreeSet<>(held);
    heldOnes.retainAll(lines);
    Map<String, String> out = new TreeMap<>(leftOut);
    out.keySet().retainAll(lines);
    return new Marks(heldOnes, out);
  }
}
