package pressweek.data.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.guide.Draft.Gap;
import pressweek.data.guide.FamilyPlan.Place;
import pressweek.data.guide.Form.Literal;
import pressweek.data.guide.Form.Slot;
import pressweek.data.guide.RuleBook.Meaning;
import pressweek.data.guide.SlotWriter.Wanted;
import pressweek.data.guide.SlotWriter.Written;

/** Writes the codes of one family that say what is known of an item. */
final class DraftSearch {
  /**
   * Steps after which a search ends with what it has; a family of a usual guide needs some dozen.
   */
  private static final int MOST_STEPS = 3_000;

  private static final Comparator<Sofar> BEST_FIRST =
      Comparator.comparingInt((Sofar one) -> one.gaps().size()).thenComparingInt(Sofar::unasked);

  private final FamilyPlan plan;
  private final String separator;
  private final SlotWriter slots;
  private final Map<String, String> known;
  private final Map<String, String> knownKeys = new HashMap<>();
  private final Visitor visitor;
  private int steps;

  /** Whoever takes the codes. */
  interface Visitor {
    /** Takes a code that says all that it can; true when no more are wanted. */
    boolean take(Written code, Meaning meaning, List<Gap> gaps);

    /**
     * True when a code with as many gaps and unasked statements, or more, is still wanted; what is
     * not is not written to its end.
     */
    default boolean wants(int gaps, int unasked) {
      return true;
    }
  }

  /**
   * A code so far.
   *
   * @param text its text
   * @param says values by attribute
   * @param gaps open fields
   * @param order place of the last symbol in its table
   * @param unasked statements beyond what is known
   */
  private record Sofar(
      String text, Map<String, String> says, List<Gap> gaps, int order, int unasked) {
    Sofar with(Written written, Set<String> asked) {
      Map<String, String> all = says;
      int beyond = unasked;
      if (!written.says().isEmpty()) {
        all = new LinkedHashMap<>(says);
        for (Map.Entry<String, String> said : written.says().entrySet()) {
          boolean more = !asked.contains(said.getKey()) && !said.getValue().isEmpty();
          String old = all.put(said.getKey(), said.getValue());
          beyond += more && old == null ? 1 : 0;
        }
      }
      List<Gap> open = gaps;
      if (written.gap().isPresent()) {
        open = new ArrayList<>(gaps);
        open.add(written.gap().get());
      }
      return new Sofar(text + written.text(), all, open, written.order(), beyond);
    }
  }

  DraftSearch(
      FamilyPlan plan,
      String separator,
      SlotWriter slots,
      Map<String, String> known,
      Visitor visitor) {
    this.plan = plan;
    this.separator = separator;
    this.slots = slots;
    this.known = known;
    known.forEach((name, value) -> knownKeys.put(name, Values.key(name, value)));
    this.visitor = visitor;
  }

  /** Visits the codes, those with the fewest gaps of a part first. */
  void run() {
    Sofar none = new Sofar("", Map.of(), List.of(), -1, 0);
    if (known.entrySet().stream()
        .allMatch(value -> plan.canSay(value.getKey(), value.getValue()))) {
      place(0, none, -1);
    }
  }

  /** True when everything known is said already or can be said from a place on. */
  private boolean stillSayable(Sofar sofar, int fromPlace) {
    for (Map.Entry<String, String> value : known.entrySet()) {
      String name = value.getKey();
      if (!value.getValue().isEmpty()
          && !sofar.says().containsKey(name)
          && !plan.canSay(name, fromPlace)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Writes on from a place.
   *
   * @param last order of the symbol that the same part was just written with; -1 for none
   */
  private boolean place(int index, Sofar sofar, int last) {
    if (++steps > MOST_STEPS) {
      return true;
    }
    if (!stillSayable(sofar, index)) {
      return false;
    }
    if (index == plan.places().size()) {
      Meaning meaning = RuleBook.of(sofar.says(), plan.rules(), openIn(sofar));
      Written code = new Written(sofar.text(), sofar.says(), Optional.empty(), 0);
      return visitor.take(code, meaning, sofar.gaps());
    }
    Place place = plan.places().get(index);
    if (place.optional() && place(skip(index), sofar, -1)) {
      return true;
    }
    if (place.again() && last < 0) {
      return false;
    }
    String before = sofar.text().isEmpty() ? "" : separator;
    for (Sofar next : forms(place, sofar, before)) {
      boolean rising = !place.again() || next.order() > last;
      boolean says = !place.optional() || helps(place.part(), sofar, next);
      boolean wanted = visitor.wants(next.gaps().size(), next.unasked());
      if (rising && says && wanted && place(index + 1, next, next.order())) {
        return true;
      }
    }
    return false;
  }

  /** True when a part that might be left out says something known, or leads to it by a rule. */
  private boolean helps(Part part, Sofar before, Sofar after) {
    for (String name : after.says().keySet()) {
      if (known.containsKey(name) && !before.says().containsKey(name)) {
        return true;
      }
    }
    for (String name : plan.leadsTo(part)) {
      if (!known.getOrDefault(name, "").isEmpty() && !before.says().containsKey(name)) {
        return true;
      }
    }
    return false;
  }

  private Set<String> openIn(Sofar sofar) {
    if (sofar.gaps().isEmpty()) {
      return Set.of();
    }
    Set<String> open = open(sofar.gaps());
    open.removeAll(known.keySet());
    return open;
  }

  /** The place behind a part and all its repeats. */
  private int skip(int index) {
    int next = index + 1;
    while (next < plan.places().size() && plan.places().get(next).again()) {
      next++;
    }
    return next;
  }

  private List<Sofar> forms(Place place, Sofar sofar, String before) {
    List<Sofar> written = new ArrayList<>();
    for (Form form : place.part().forms()) {
      if (Values.agree(known, form.sets()) && Values.agree(sofar.says(), form.sets())) {
        Written start = new Written(before, form.sets(), Optional.empty(), 0);
        pieces(form, 0, sofar.with(start, known.keySet()), written);
      }
    }
    if (written.size() > 1) {
      written.sort(BEST_FIRST);
    }
    return written;
  }

  private void pieces(Form form, int piece, Sofar sofar, List<Sofar> written) {
    if (piece == form.pieces().size()) {
      written.add(sofar);
    } else if (form.pieces().get(piece) instanceof Literal literal) {
      Written text = new Written(literal.text(), Map.of(), Optional.empty(), sofar.order());
      pieces(form, piece + 1, sofar.with(text, known.keySet()), written);
    } else if (form.pieces().get(piece) instanceof Slot slot) {
      for (Written next :
          slots.written(slot.field(), new Wanted(known, knownKeys, sofar.says(), plan))) {
        pieces(form, piece + 1, sofar.with(next, known.keySet()), written);
      }
    }
  }

  /** The attributes of gaps. */
  static Set<String> open(List<Gap> gaps) {
    Set<String> open = new LinkedHashSet<>();
    gaps.forEach(gap -> open.addAll(gap.attributes()));
    return open;
  }
}
