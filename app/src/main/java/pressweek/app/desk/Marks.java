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
 * @param splits lines that are made in two parts, with the pieces of the first
 */
public record Marks(Set<String> held, Map<String, String> leftOut, Map<String, Integer> splits) {
  /** Nothing set. */
  public static final Marks NONE = new Marks(Set.of(), Map.of(), Map.of());

  public Marks {
    held = Collections.unmodifiableSet(new TreeSet<>(held));
    leftOut = Collections.unmodifiableMap(new TreeMap<>(leftOut));
    splits = Collections.unmodifiableMap(new TreeMap<>(splits));
  }

  Marks withHeld(Set<String> lines) {
    Set<String> all = new TreeSet<>(held);
    all.addAll(lines);
    return new Marks(all, leftOut, splits);
  }

  Marks withoutHeld(Set<String> lines) {
    Set<String> rest = new TreeSet<>(held);
    rest.removeAll(lines);
    return new Marks(rest, leftOut, splits);
  }

  Marks withLeftOut(String line, String reason) {
    Map<String, String> all = new TreeMap<>(leftOut);
    all.put(line, reason);
    return new Marks(held, all, splits);
  }

  Marks takenIn(String line) {
    Map<String, String> rest = new TreeMap<>(leftOut);
    rest.remove(line);
    return new Marks(held, rest, splits);
  }

  Marks split(String line, int pieces) {
    Map<String, Integer> all = new TreeMap<>(splits);
    all.put(line, pieces);
    return new Marks(held, leftOut, all);
  }

  Marks joined(String line) {
    Map<String, Integer> rest = new TreeMap<>(splits);
    rest.remove(line);
    return new Marks(held, leftOut, rest);
  }

  /** Only marks of these lines; splits stay, since their parts have other names. */
  Marks of(Set<String> lines) {
    Set<String> heldOnes = new TreeSet<>(held);
    heldOnes.retainAll(lines);
    Map<String, String> out = new TreeMap<>(leftOut);
    out.keySet().retainAll(lines);
    return new Marks(heldOnes, out, splits);
  }
}
