package pressweek.data.guide;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.guide.Form.Slot;

/** The codes of one family: what may be written where, and what can be found among all of them. */
public final class CodeSpace {
  private final Guide guide;
  private final Family family;
  private final List<GuideRule> rules;
  private final Map<Field, List<Choice>> choices = new IdentityHashMap<>();
  private final Sorts sorts;

  /** The codes of a family of a guide. */
  public CodeSpace(Guide guide, Family family) {
    this.guide = guide;
    this.family = family;
    this.rules = guide.rules(family);
    for (Field field : guide.sheet().fields()) {
      choices.put(field, Choices.of(field));
    }
    sorts = new Sorts(List.of(), choices, rules, family);
  }

  /**
   * What a search came to.
   *
   * @param drawn what was found
   * @param settled false when it broke off before it had looked everywhere
   */
  public record Found(Optional<Drawn> drawn, boolean settled) {}

  /** The kind of item. */
  public Family family() {
    return family;
  }

  /** The rules of the family: its own, then those for all. */
  public List<GuideRule> rules() {
    return rules;
  }

  /** What may be written for a field; of a number with many values, some of them. */
  public List<Choice> choices(Field field) {
    return choices.getOrDefault(field, List.of());
  }

  /**
   * Every symbol at every place at which it may stand, and every form without a field: one pin for
   * each.
   */
  public List<Pin> pins() {
    List<Pin> pins = new ArrayList<>();
    for (int part = 0; part < family.parts().size(); part++) {
      List<Form> forms = family.parts().get(part).forms();
      for (int form = 0; form < forms.size(); form++) {
        List<Form.Piece> pieces = forms.get(form).pieces();
        if (pieces.stream().noneMatch(Slot.class::isInstance)) {
          pins.add(new Pin(part, form, Map.of()));
        }
        for (int piece = 0; piece < pieces.size(); piece++) {
          if (pieces.get(piece) instanceof Slot slot) {
            for (Choice choice : choices(slot.field())) {
              pins.add(new Pin(part, form, Map.of(piece, choice)));
            }
          }
        }
      }
    }
    return pins;
  }

  /** The sorts of symbols when this matters beside the rules. */
  Sorts sorts(List<GuideRule.Clause> ofInterest) {
    return ofInterest.isEmpty() ? sorts : new Sorts(ofInterest, choices, rules, family);
  }

  /** What the rules can tell of what something says; what is alike to them is equal. */
  public List<Map<String, String>> sort(Choice choice) {
    return sorts.of(List.of(choice.sets()));
  }

  /**
   * Looks for a code. Symbols which no rule tells apart stand for each other, so that a usual
   * family is looked through to its end.
   */
  public Found find(Quest quest) {
    return new SpaceSearch(this, quest).run();
  }

  /** A code of these parts, in their order. */
  Drawn drawn(List<Picked> picked) {
    List<String> texts = new ArrayList<>();
    picked.forEach(part -> texts.add(part.text()));
    String code = String.join(guide.sheet().separator(), texts);
    return new Drawn(code, family, picked, Map.of(), List.of()).under(rules);
  }
}
