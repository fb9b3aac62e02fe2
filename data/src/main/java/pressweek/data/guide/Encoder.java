package pressweek.data.guide;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.guide.Draft.Gap;
import pressweek.data.guide.RuleBook.Meaning;
import pressweek.data.guide.SlotWriter.Written;

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
    Exactly exactly = new Exactly(attributes);
    for (FamilyPlan plan : plans) {
      search(plan, plan.whole(attributes), exactly);
      if (!exactly.code.isEmpty()) {
        return new Encoded(exactly.code, plan.family().name(), List.of());
      }
    }
    return new Encoded("", "", List.of("no code says just this"));
  }

  /** Takes the first code that says just what is asked for. */
  private static final class Exactly implements DraftSearch.Visitor {
    private final Map<String, String> attributes;
    private String code = "";

    Exactly(Map<String, String> attributes) {
      this.attributes = attributes;
    }

    @Override
    public boolean take(Written written, Meaning meaning, List<Gap> gaps) {
      Map<String, String> values = meaning.values();
      boolean exact =
          meaning.faults().isEmpty()
              && values.size() == attributes.size()
              && Values.covers(values, attributes);
      code = exact ? written.text() : "";
      return exact;
    }

    @Override
    public boolean wants(int gaps, int unasked) {
      return gaps == 0 && unasked == 0;
    }
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
    BestDrafts best = new BestDrafts(known, most);
    for (FamilyPlan plan : plans) {
      best.of(plan.family(), plan.rules());
      search(plan, known, best);
    }
    return best.drafts();
  }

  /** Why no code says what is known of an item; empty when one does. */
  public List<Objection> objections(Map<String, String> known) {
    return objections.of(known);
  }

  /** The numbers that an attribute may be, in words; empty when no field reads them. */
  Optional<String> numbers(String attribute) {
    return guide.sheet().fields().stream()
        .filter(field -> field.attribute().equals(attribute))
        .filter(Field.Number.class::isInstance)
        .map(field -> ((Field.Number) field).words())
        .findFirst();
  }

  /** Every attribute that codes and rules of the guide set, in the guide's order. */
  Set<String> attributes() {
    return guide.sheet().attributes();
  }

  /** Visits the codes of all families that say what is known, whatever the rules think of them. */
  void search(Map<String, String> known, DraftSearch.Visitor visitor) {
    plans.forEach(plan -> search(plan, known, visitor));
  }

  private void search(FamilyPlan plan, Map<String, String> known, DraftSearch.Visitor visitor) {
    new DraftSearch(plan, guide.sheet().separator(), slots, known, visitor).run();
  }
}
