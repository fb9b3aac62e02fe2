package pressweek.data.lookalike;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import pressweek.data.problem.NamedPair;

/**
 * Which insert parts of a plant a person could take for each other, worked out from what they are:
 *
 * <ul>
 *   <li>threads that differ but whose major diameters are within 6 % of the larger, of whatever
 *       kinds;
 *   <li>blind for through nuts of one thread;
 *   <li>the next length, among the plant's own, of one kind and thread;
 *   <li>stainless steels of different groups (303 for 316, A1 or A2 for A4) of one kind, thread and
 *       length;
 *   <li>one finish with different passivations (yellow trivalent for yellow hexavalent), else the
 *       same;
 *   <li>the pairs that the plant names.
 * </ul>
 *
 * Within one thread, parts of different colour at sight (silver, yellow, dark) are not taken for
 * each other, but in a pair that the plant names. What the rules are is common practice, no source.
 */
public final class LookAlikes {
  private final Map<String, SeenInsert> inserts = new LinkedHashMap<>();
  private final Map<List<Object>, TreeSet<Double>> lengths = new HashMap<>();
  private final Map<String, Map<String, String>> named = new HashMap<>();

  private LookAlikes() {}

  /**
   * Among the insert parts of a plant, of which the first with a number counts.
   *
   * @param inserts all parts of the plant, also those that nobody brings: they say what the next
   *     length is
   * @param named pairs that the plant names; a part that is not among the others is passed over
   */
  public static LookAlikes of(Collection<InsertLook> inserts, Set<NamedPair> named) {
    LookAlikes all = new LookAlikes();
    for (InsertLook look : inserts) {
      all.inserts.computeIfAbsent(look.id(), id -> SeenInsert.of(look));
    }
    all.inserts.values().forEach(all::addLength);
    for (NamedPair pair : named) {
      all.named.computeIfAbsent(pair.a(), a -> new HashMap<>()).put(pair.b(), pair.reason());
      all.named.computeIfAbsent(pair.b(), b -> new HashMap<>()).put(pair.a(), pair.reason());
    }
    return all;
  }

  private void addLength(SeenInsert insert) {
    insert
        .look()
        .lengthMm()
        .ifPresent(mm -> lengths.computeIfAbsent(form(insert), f -> new TreeSet<>()).add(mm));
  }

  /** What parts must share for their lengths to be compared. */
  private static List<Object> form(SeenInsert insert) {
    Object thread = insert.thread().isPresent() ? insert.thread().get() : insert.threadKey();
    return List.of(thread, insert.kind(), insert.shade());
  }

  /**
   * Why one part could be taken for another: none when it could not, or when one is not known; two
   * when the plant names a pair that is alike anyhow.
   *
   * @param wanted part number of the one that is wanted
   * @param other part number of the one that could be taken for it
   */
  public List<LookAlike> between(String wanted, String other) {
    SeenInsert a = inserts.get(wanted);
    SeenInsert b = inserts.get(other);
    return a == null || b == null || a == b ? List.of() : between(a, b);
  }

  private List<LookAlike> between(SeenInsert a, SeenInsert b) {
    List<LookAlike> reasons = new ArrayList<>();
    Optional.ofNullable(named.getOrDefault(a.id(), Map.of()).get(b.id()))
        .ifPresent(reason -> reasons.add(Differences.named(a, b, reason)));
    computed(a, b).ifPresent(reasons::add);
    return List.copyOf(reasons);
  }

  private Optional<LookAlike> computed(SeenInsert a, SeenInsert b) {
    if (!a.hasThreadOf(b)) {
      return Differences.threads(a, b);
    }
    if (!a.kind().equals(b.kind())) {
      return a.threadKey().isEmpty() ? Optional.empty() : Differences.bottom(a, b);
    }
    OptionalDouble own = a.look().lengthMm();
    OptionalDouble other = b.look().lengthMm();
    if (own.isPresent() != other.isPresent()) {
      return Optional.empty();
    }
    if (Math.abs(own.orElse(0) - other.orElse(0)) <= Differences.SAME_LENGTH_MM) {
      return Differences.substance(a, b);
    }
    return a.shade() == b.shade() && areNeighbours(a, own.orElse(0), other.orElse(0))
        ? Optional.of(Differences.length(a, b))
        : Optional.empty();
  }

  /** True when the plant has no length between the two. */
  private boolean areNeighbours(SeenInsert insert, double one, double two) {
    Double next =
        lengths
            .getOrDefault(form(insert), new TreeSet<>())
            .higher(Math.min(one, two) + Differences.SAME_LENGTH_MM);
    return next != null && next >= Math.max(one, two) - Differences.SAME_LENGTH_MM;
  }

  /** What could be taken for a part, in the order of the parts. */
  public List<LookAlike> of(String wanted) {
    SeenInsert a = inserts.get(wanted);
    return a == null
        ? List.of()
        : inserts.values().stream()
            .filter(b -> b != a)
            .flatMap(b -> between(a, b).stream())
            .toList();
  }

  /** All pairs, each once, seen from the part that comes first. */
  public List<LookAlike> all() {
    List<SeenInsert> list = List.copyOf(inserts.values());
    List<LookAlike> all = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      for (int j = i + 1; j < list.size(); j++) {
        all.addAll(between(list.get(i), list.get(j)));
      }
    }
    return List.copyOf(all);
  }
}
