package pressweek.data.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.guide.Form.Slot;

/**
 * A family as codes are written: its parts in canonical order, a part that may come several times
 * as often as it may, and which attributes can still be said from each place on.
 */
final class FamilyPlan {
  private final Family family;
  private final List<GuideRule> rules;
  private final List<Place> places = new ArrayList<>();
  private final List<Set<String>> sayable = new ArrayList<>();
  private final Map<String, Set<String>> derivable = new HashMap<>();
  private final Map<Part, Set<String>> leadsTo = new IdentityHashMap<>();
  private final Map<Field, TableIndex> indexes;
  private final Map<String, Set<String>> values = new HashMap<>();
  private final Set<String> open = new HashSet<>();

  /**
   * A part at its place.
   *
   * @param part the part
   * @param optional true when it may be left out here
   * @param again true when it follows itself
   */
  record Place(Part part, boolean optional, boolean again) {}

  FamilyPlan(Family family, List<GuideRule> rules, Map<Field, TableIndex> indexes) {
    this.family = family;
    this.rules = List.copyOf(rules);
    this.indexes = new IdentityHashMap<>(indexes);
    for (Part part : family.parts()) {
      for (int i = 0; i < part.repeat(); i++) {
        places.add(new Place(part, part.optional() || i > 0, i > 0));
      }
    }
    for (GuideRule rule : rules) {
      if (rule.sets()) {
        rule.what().forEach(this::derivable);
      }
    }
    Set<String> later = new HashSet<>();
    sayable.add(Set.of());
    for (int i = places.size() - 1; i >= 0; i--) {
      Set<String> own = attributes(places.get(i).part());
      leadsTo.put(places.get(i).part(), following(own));
      later.addAll(own);
      sayable.add(0, Set.copyOf(later));
    }
  }

  private Set<String> attributes(Part part) {
    Set<String> attributes = new HashSet<>();
    for (Form form : part.forms()) {
      attributes.addAll(form.sets().keySet());
      form.sets().forEach(this::value);
      for (Form.Piece piece : form.pieces()) {
        if (piece instanceof Slot slot) {
          attributes.addAll(attributes(slot.field()));
        }
      }
    }
    return attributes;
  }

  private Set<String> attributes(Field field) {
    TableIndex index = indexes.get(field);
    if (index == null) {
      open.add(field.attribute());
      return Set.of(field.attribute());
    }
    for (String name : index.attributes()) {
      index.values(name).forEach(value -> value(name, value));
    }
    return index.attributes();
  }

  private void value(String name, String value) {
    values.computeIfAbsent(name, n -> new HashSet<>()).add(Values.key(name, value));
  }

  /** An item of which everything is known: what its codes could say and it has not, it lacks. */
  Map<String, String> whole(Map<String, String> attributes) {
    Map<String, String> whole = new LinkedHashMap<>(attributes);
    sayable.get(0).forEach(attribute -> whole.putIfAbsent(attribute, ""));
    return whole;
  }

  Family family() {
    return family;
  }

  List<GuideRule> rules() {
    return rules;
  }

  List<Place> places() {
    return places;
  }

  /** The attributes that rules may set after others were said. */
  private Set<String> following(Set<String> said) {
    Set<String> reached = new HashSet<>(said);
    boolean more = true;
    while (more) {
      more = false;
      for (GuideRule rule : rules) {
        if (rule.sets() && rule.asksFor(reached)) {
          for (GuideRule.Clause clause : rule.what()) {
            more |= reached.add(clause.attribute());
          }
        }
      }
    }
    reached.removeAll(said);
    return reached;
  }

  private void derivable(GuideRule.Clause clause) {
    derivable
        .computeIfAbsent(clause.attribute(), name -> new HashSet<>())
        .add(Values.key(clause.attribute(), clause.values().get(0)));
  }

  /** The attributes that rules may set after a part was written. */
  Set<String> leadsTo(Part part) {
    return leadsTo.getOrDefault(part, Set.of());
  }

  /** True when a rule sets an attribute to that value. */
  boolean derives(String attribute, String value) {
    return derivable.getOrDefault(attribute, Set.of()).contains(Values.key(attribute, value));
  }

  /** True when a code of the family, or a rule, may give an attribute that value. */
  boolean canSay(String attribute, String value) {
    return value.isEmpty()
        || derives(attribute, value)
        || open.contains(attribute)
        || values.getOrDefault(attribute, Set.of()).contains(Values.key(attribute, value));
  }

  /** True when an attribute can be said by the part at a place or a later one, or by a rule. */
  boolean canSay(String attribute, int fromPlace) {
    return sayable.get(fromPlace).contains(attribute) || derivable.containsKey(attribute);
  }
}
