package pressweek.data.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.GuideRule.Clause;

/**
 * Tells which words speak of a second insert: in {@code M8 blind nut and M10x20 stud} the thread,
 * the kind and the length of the second group.
 */
final class TwoInserts {
  private static final Set<String> BETWEEN = Set.of("and", "plus", "+", "&", ",", ";");

  private final Offer offer;
  private final Tokens tokens;
  private final List<Mention> mentions;
  private final List<Claim> claims;

  TwoInserts(Offer offer, Tokens tokens, List<Mention> mentions, List<Claim> claims) {
    this.offer = offer;
    this.tokens = tokens;
    this.mentions = mentions;
    this.claims = claims;
  }

  /** The mentions of an insert so far: their attributes with what they say. */
  private static final class Group {
    private final Set<Integer> members = new HashSet<>();
    private final Map<String, Claim> says = new LinkedHashMap<>();
  }

  /**
   * The mentions that may speak of the second insert, in one way or the other; only the empty set
   * when one insert is all that is spoken of.
   */
  List<Set<Integer>> ways() {
    List<Group> groups = groups();
    return groups.size() == 2
        ? List.of(groups.get(1).members, groups.get(0).members, Set.of())
        : List.of(Set.of());
  }

  private List<Group> groups() {
    List<Group> groups = new ArrayList<>();
    boolean closed = true;
    int last = 0;
    for (int i = 0; i < claims.size(); i++) {
      Map<String, Claim> says = says(claims.get(i));
      if (says.isEmpty()) {
        continue;
      }
      Group group = groups.isEmpty() ? new Group() : groups.get(groups.size() - 1);
      boolean full = group.says.size() > 1 && between(last, mentions.get(i).from());
      if (closed || full || says.entrySet().stream().anyMatch(s -> contradicts(group, s))) {
        groups.add(new Group());
        closed = false;
      }
      Group own = groups.get(groups.size() - 1);
      own.members.add(i);
      own.says.putAll(says);
      last = mentions.get(i).to();
    }
    return merged(groups);
  }

  /** Groups that do not contradict each other speak of the same insert. */
  private static List<Group> merged(List<Group> groups) {
    List<Group> merged = new ArrayList<>();
    for (Group group : groups) {
      Group last = merged.isEmpty() ? new Group() : merged.get(merged.size() - 1);
      boolean same = group.says.entrySet().stream().noneMatch(said -> contradicts(last, said));
      if (same && !merged.isEmpty()) {
        last.members.addAll(group.members);
        group.says.forEach(last.says::putIfAbsent);
      } else {
        merged.add(group);
      }
    }
    return merged;
  }

  private boolean between(int from, int to) {
    for (int i = from; i < to; i++) {
      if (BETWEEN.contains(tokens.at(i).text())) {
        return true;
      }
    }
    return false;
  }

  private static boolean contradicts(Group group, Map.Entry<String, Claim> said) {
    Claim old = group.says.get(said.getKey());
    return old != null && !agree(said.getKey(), old, said.getValue());
  }

  private static boolean agree(String attribute, Claim a, Claim b) {
    if (a instanceof Claim.Usually usually) {
      return covers(attribute, usually, b);
    }
    if (b instanceof Claim.Usually usually) {
      return covers(attribute, usually, a);
    }
    if (a instanceof Claim.Says one && b instanceof Claim.Says other) {
      return one.values().getOrDefault(attribute, "").equals(other.values().get(attribute));
    }
    if (a instanceof Claim.Length one && b instanceof Claim.Length other) {
      return one.number().value().compareTo(other.number().value()) == 0;
    }
    return a instanceof Claim.Threaded one
        && b instanceof Claim.Threaded other
        && one.cut().name().equals(other.cut().name());
  }

  private static boolean covers(String attribute, Claim.Usually usually, Claim said) {
    if (said instanceof Claim.Usually || !(said instanceof Claim.Says says)) {
      return true;
    }
    String value = says.values().getOrDefault(attribute, "");
    for (Clause clause : usually.when()) {
      if (clause.attribute().equals(attribute)) {
        return Clauses.holds(clause, value);
      }
    }
    return usually.weak() || value.equals(usually.usual().get(attribute));
  }

  /** The attributes of a first insert that a claim speaks of. */
  private Map<String, Claim> says(Claim claim) {
    Set<String> attributes = new HashSet<>();
    if (claim instanceof Claim.Says says && !says.code()) {
      attributes.addAll(says.values().keySet());
    } else if (claim instanceof Claim.Usually usually && !usually.weak()) {
      attributes.addAll(usually.usual().keySet());
      attributes.addAll(usually.values().keySet());
    } else if (claim instanceof Claim.Threaded threaded) {
      attributes.addAll(threaded.cut().values().keySet());
    } else if (claim instanceof Claim.Length length) {
      attributes.add(length.attribute());
    }
    Map<String, Claim> says = new HashMap<>();
    attributes.stream().filter(offer::isFirst).forEach(name -> says.put(name, claim));
    return says;
  }
}
