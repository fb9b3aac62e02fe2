package pressweek.data.declared;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pressweek.data.problem.Declaration;

/** The declarations of a plant, to be looked up. */
public final class Declared {
  /** Before a resin's id: the approval of its regrind. */
  public static final String REGRIND = "regrind:";

  private final Map<Key, List<Declaration>> declarations = new HashMap<>();

  private record Key(String what, String need) {}

  /** Declarations in the order in which they are entered. */
  public Declared(List<Declaration> all) {
    for (Declaration one : all) {
      declarations.computeIfAbsent(key(one.what(), one.need()), k -> new ArrayList<>()).add(one);
    }
  }

  private static Key key(String what, String need) {
    return new Key(what, need.toLowerCase(Locale.ROOT));
  }

  /** Every declaration of a material for a need, valid or not. */
  public List<Declaration> all(Subject subject, String need) {
    return subject.names().stream().flatMap(name -> all(name, need).stream()).toList();
  }

  /** Every declaration that is entered under a name for a need. */
  public List<Declaration> all(String name, String need) {
    return declarations.getOrDefault(key(name, need), List.of());
  }

  /** Of those that count at a minute the one that counts longest. */
  public Optional<Declaration> valid(Subject subject, String need, int atMin) {
    return all(subject, need).stream()
        .filter(d -> d.validAt(atMin))
        .max(Comparator.comparingInt(d -> d.expiresMin().orElse(Integer.MAX_VALUE)));
  }

  /** The approval of regrind of a resin for a need that counts at a minute. */
  public Optional<Declaration> regrind(String resin, String need, int atMin) {
    return all(REGRIND + resin, need).stream().filter(d -> d.validAt(atMin)).findFirst();
  }
}
