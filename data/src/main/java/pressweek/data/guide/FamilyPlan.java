package pressweek.data.guide;

import java.util.ArrayList;
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
  private final List<String> all;
  private final Set<String> derivable = new HashSet<>();
  private final Map<Field, TableIndex> indexes;

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
        rule.what().forEach(clause -> derivable.add(clause.attribute()));
      }
    }
    Set<String> later = new HashSet<>();
    sayable.add(Set.of());
    for (int i = places.size() - 1; i >= 0; i--) {
      later.addAll(attributes(places.get(i).part()));
      sayable.add(0, Set.copyOf(later));
    }
    all = later.stream().sorted().toList();
  }

  private Set<String> attributes(Part part) {
    Set<String> attributes = new HashSet<>();
    for (Form form : part.forms()) {
      attributes.addAll(form.sets().keySet());
      for (Form.Piece piece : form.pieces()) {
        if (piece instanceof Slot slot) {
          TableIndex index = indexes.get(slot.field());
          attributes.addAll(index == null ? Set.of(slot.field().attribute()) : index.attributes());
        }
      }
    }
    return attributes;
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

  /** Everything known of an item, and that it has nothing else of what its code could say. */
  Map<String, String> exactly(Map<String, String> attributes) {
    Map<String, String> exactly = new LinkedHashMap<>(attributes);
    all.forEach(name -> exactly.putIfAbsent(name, ""));
    return exactly;
  }

  /** True when an attribute can be said by the part at a place or a later one, or by a rule. */
  boolean canSay(String attribute, int fromPlace) {
    return sayable.get(fromPlace).contains(attribute) || derivable.contains(attribute);
  }
}
