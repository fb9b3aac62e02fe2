package pressweek.data.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** From what is known of an item to its code. */
public final class Encoder {
  private final Guide guide;
  private final List<FamilyPlan> plans = new ArrayList<>();
  private final SlotWriter slots;
  private final Objections objections;

  Encoder(Guide guide) {
    this.guide = guide;
    Map<Field, TableIndex> indexes = new IdentityHashMap<>();
    for (Field field : guide.sheet().fields()) {
      if (field instanceof Field.Table table) {
        indexes.put(table, new TableIndex(table));
      }
    }
    for (Family family : guide.families()) {
      plans.add(new FamilyPlan(family, guide.rules(family), indexes));
    }
    this.slots = new SlotWriter(indexes);
    this.objections = new Objections(this, List.copyOf(indexes.values()));
  }

  /**
   * The code of an item in the guide's own spelling.
   *
   * @param attributes everything that {@link Guide#decode} says of the item
   */
  public Encoded encode(Map<String, String> attributes) {
    Encoded[] found = {new Encoded("", "", List.of("no code says just this"))};
    for (FamilyPlan plan : plans) {
      search(
          plan,
          plan.exactly(attributes),
          (code, meaning, gaps) -> {
            Map<String, String> values = meaning.values();
            boolean exact =
                gaps.isEmpty()
                    && meaning.faults().isEmpty()
                    && values.size() == attributes.size()
                    && Values.covers(values, attributes);
            if (exact) {
              found[0] = new Encoded(code.text(), plan.family().name(), List.of());
            }
            return exact;
          });
      if (found[0].good()) {
        return found[0];
      }
    }
    return found[0];
  }

  /** A code in the guide's own spelling; a code that means nothing as it is. */
  public String canonical(String code) {
    Decoded decoded = guide.decode(code);
    if (!decoded.good()) {
      return code;
    }
    Map<String, String> values = new LinkedHashMap<>();
    decoded.attributes().forEach(attribute -> values.put(attribute.name(), attribute.value()));
    Encoded encoded = encode(values);
    return encoded.good() ? encoded.code() : decoded.code();
  }

  /**
   * The codes which best say what is known of an item: those with the fewest gaps first, then those
   * which say least beyond it, then in the guide's order.
   *
   * @param known values by attribute; an empty value is: the item has no such attribute
   * @param most how many at most
   */
  public List<Draft> drafts(Map<String, String> known, int most) {
    List<Draft> drafts = new ArrayList<>();
    for (FamilyPlan plan : plans) {
      search(
          plan,
          known,
          (code, meaning, gaps) -> {
            Set<String> open = DraftSearch.open(gaps);
            Map<String, String> values = meaning.values();
            values.keySet().removeIf(name -> open.contains(name) && !known.containsKey(name));
            boolean good =
                meaning.faults().stream().allMatch(fault -> open.contains(fault.attribute()))
                    && Values.covers(values, known);
            if (good) {
              Set<String> implied = new HashSet<>(code.says().keySet());
              implied.removeAll(known.keySet());
              implied.removeIf(name -> code.says().getOrDefault(name, "").isEmpty());
              drafts.add(new Draft(code.text(), plan.family().name(), values, gaps, implied));
            }
            return false;
          });
    }
    drafts.sort(
        Comparator.comparingInt((Draft draft) -> draft.gaps().size())
            .thenComparingInt(draft -> draft.implied().size()));
    return List.copyOf(drafts.subList(0, Math.min(most, drafts.size())));
  }

  /** Why no code says what is known of an item; empty when one does. */
  public List<Objection> objections(Map<String, String> known) {
    return objections.of(known);
  }

  /** Visits the codes of all families that say what is known, whatever the rules think of them. */
  void search(Map<String, String> known, DraftSearch.Visitor visitor) {
    plans.forEach(plan -> search(plan, known, visitor));
  }

  private void search(FamilyPlan plan, Map<String, String> known, DraftSearch.Visitor visitor) {
    new DraftSearch(plan, guide.sheet().separator(), slots, known, visitor).run();
  }
}
