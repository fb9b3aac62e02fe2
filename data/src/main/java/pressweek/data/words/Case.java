package pressweek.data.words;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.words.Mention.Turn;

/** What is known, open and assumed of an item while one reading of the words is made. */
final class Case {
  private final Offer offer;
  private final Map<String, String> known = new LinkedHashMap<>();
  private final Map<String, Integer> saidBy = new HashMap<>();
  private final Set<String> fromCode = new HashSet<>();
  private final Map<String, List<String>> open = new LinkedHashMap<>();
  private final Map<String, Set<String>> unwanted = new HashMap<>();
  private final List<Assumed> assumed = new ArrayList<>();
  private final List<String> conflicts = new ArrayList<>();
  private final Map<Integer, Map<String, String>> means = new HashMap<>();

  Case(Offer offer) {
    this.offer = offer;
  }

  /**
   * A value that is said.
   *
   * @param mention the mention that says it
   * @param attribute attribute
   * @param value value
   * @param code true when a whole code says it
   * @param turn what stands before the mention
   */
  record Said(int mention, String attribute, String value, boolean code, Turn turn) {}

  /** Takes a value that is said; one that contradicts another leaves both open. */
  void say(Said said) {
    String attribute = said.attribute();
    String value = said.value();
    if (said.turn() == Turn.NOT) {
      unwanted.computeIfAbsent(attribute, a -> new HashSet<>()).add(value);
      understand(said.mention(), attribute, "not " + value);
      return;
    }
    understand(said.mention(), attribute, value);
    List<String> choices = open.get(attribute);
    String old = known.get(attribute);
    if (choices != null) {
      if (!choices.contains(value)) {
        leaveOpen(attribute, added(choices, value));
      }
    } else if (old == null) {
      set(said);
    } else if (!old.equals(value)) {
      contradict(said, old);
    }
  }

  private void set(Said said) {
    known.put(said.attribute(), said.value());
    saidBy.put(said.attribute(), said.mention());
    if (said.code()) {
      fromCode.add(said.attribute());
    }
  }

  private void contradict(Said said, String old) {
    String attribute = said.attribute();
    if (isUnwanted(attribute, old)) {
      set(said);
      return;
    }
    if (said.turn() == Turn.BUT && fromCode.remove(attribute)) {
      set(said);
      assume(
          Map.of(attribute, said.value()),
          offer.display(attribute, said.value())
              + " replaces the code's "
              + offer.display(attribute, old));
      return;
    }
    if (said.turn() != Turn.OR) {
      conflict(
          Labels.of(attribute)
              + ": "
              + offer.display(attribute, old)
              + " and "
              + offer.display(attribute, said.value())
              + " are both said");
    }
    leaveOpen(attribute, List.of(old, said.value()));
  }

  private static List<String> added(List<String> choices, String value) {
    List<String> more = new ArrayList<>(choices);
    more.add(value);
    return more;
  }

  /** Makes an attribute one to ask for, and forgets what its mention said beside it. */
  void leaveOpen(String attribute, List<String> choices) {
    open.put(attribute, List.copyOf(choices));
    known.remove(attribute);
    Integer by = saidBy.remove(attribute);
    if (by != null && !fromCode.contains(attribute)) {
      for (String other : List.copyOf(known.keySet())) {
        if (by.equals(saidBy.get(other)) && offer.inOneTable(attribute, other)) {
          known.remove(other);
          saidBy.remove(other);
          open.putIfAbsent(other, List.of());
        }
      }
    }
  }

  void understand(int mention, String attribute, String value) {
    means.computeIfAbsent(mention, m -> new LinkedHashMap<>()).put(attribute, value);
  }

  void assume(Map<String, String> values, String because) {
    assumed.add(new Assumed(values, because));
  }

  void conflict(String sentence) {
    if (!conflicts.contains(sentence)) {
      conflicts.add(sentence);
    }
  }

  /** Takes values that were not said. */
  void fill(Map<String, String> values) {
    values.forEach(known::putIfAbsent);
  }

  /** Forgets a value of a code which the words replace. */
  boolean replace(String attribute) {
    boolean replaced = fromCode.remove(attribute);
    if (replaced) {
      known.remove(attribute);
    }
    return replaced;
  }

  Map<String, String> known() {
    return Collections.unmodifiableMap(known);
  }

  /** Attributes to ask for, with the values that were said for them. */
  Map<String, List<String>> open() {
    return open;
  }

  List<Assumed> assumed() {
    return assumed;
  }

  List<String> conflicts() {
    return conflicts;
  }

  Map<String, String> means(int mention) {
    return means.getOrDefault(mention, Map.of());
  }

  /** The mention that said an attribute; -1 when none did. */
  int saidBy(String attribute) {
    return saidBy.getOrDefault(attribute, -1);
  }

  boolean isUnwanted(String attribute, String value) {
    return unwanted.getOrDefault(attribute, Set.of()).contains(value);
  }

  /** True when some value of an attribute was said not to be wanted. */
  boolean isRefused(String attribute) {
    return unwanted.containsKey(attribute);
  }

  /** True when values may be taken without contradicting what is known, open or not wanted. */
  boolean admits(Map<String, String> values) {
    for (Map.Entry<String, String> value : values.entrySet()) {
      String old = known.get(value.getKey());
      if (old != null && !old.equals(value.getValue())
          || open.containsKey(value.getKey())
          || isUnwanted(value.getKey(), value.getValue())) {
        return false;
      }
    }
    return true;
  }
}
