package pressweek.data.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.guide.CodeSpace.Found;
import pressweek.data.guide.Form.Slot;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.guide.GuideRule.Verb;

/** Looks through the codes of a family, one of each sort that the rules can tell apart. */
final class SpaceSearch {
  /** Steps after which a search breaks off; a family of a usual guide needs some hundred. */
  private static final int MOST_STEPS = 60_000;

  /** A part that may come often is written at most this many times. */
  private static final int MOST_REPEATS = 3;

  private final CodeSpace space;
  private final Quest quest;
  private final Sorts sorts;
  private final Map<String, List<Choice>> oneOfEach = new HashMap<>();
  private final List<Picked> picked = new ArrayList<>();
  private int steps;

  SpaceSearch(CodeSpace space, Quest quest) {
    this.space = space;
    this.quest = quest;
    this.sorts = space.sorts(quest.holds());
  }

  Found run() {
    Optional<Drawn> found = part(0, Map.of());
    return new Found(found, found.isPresent() || steps <= MOST_STEPS);
  }

  private List<Pin> pins(int part) {
    return quest.pins().stream().filter(pin -> pin.part() == part).toList();
  }

  /** What may stand at a piece of a form: what is pinned there, or one of each sort. */
  private List<Choice> choices(int part, Form form, int piece) {
    for (Pin pin : pins(part)) {
      Choice pinned = pin.choices().get(piece);
      if (pinned != null) {
        return List.of(pinned);
      }
    }
    Field field = ((Slot) form.pieces().get(piece)).field();
    return oneOfEach.computeIfAbsent(field.name(), f -> sorts.oneOfEach(space.choices(field)));
  }

  /** Writes the parts from one on. */
  private Optional<Drawn> part(int index, Map<String, String> said) {
    if (++steps > MOST_STEPS) {
      return Optional.empty();
    }
    if (index == space.family().parts().size()) {
      return Optional.of(space.drawn(picked)).filter(quest::met);
    }
    Part part = space.family().parts().get(index);
    if (part.optional() && pins(index).isEmpty()) {
      Optional<Drawn> without = part(index + 1, said);
      if (without.isPresent()) {
        return without;
      }
    }
    return forms(new Spot(index, 0, part.repeat()), said);
  }

  /**
   * Where the writing stands.
   *
   * @param part index of the part
   * @param fromForm the first form that it may be written in
   * @param times how often it may still come
   */
  private record Spot(int part, int fromForm, int times) {}

  /** Writes a part in each of its forms. */
  private Optional<Drawn> forms(Spot spot, Map<String, String> said) {
    List<Form> forms = space.family().parts().get(spot.part()).forms();
    for (int form = spot.fromForm(); form < forms.size(); form++) {
      int index = form;
      Map<String, String> more = new LinkedHashMap<>(said);
      if (pins(spot.part()).stream().allMatch(pin -> pin.form() == index)
          && merge(more, forms.get(form).sets())) {
        Spot here = new Spot(spot.part(), form, spot.times());
        Optional<Drawn> found = pieces(here, 0, List.of(), more);
        if (found.isPresent() || steps > MOST_STEPS) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  /** Writes the pieces of a form from one on. */
  private Optional<Drawn> pieces(
      Spot spot, int piece, List<Choice> chosen, Map<String, String> said) {
    if (++steps > MOST_STEPS) {
      return Optional.empty();
    }
    Form form = space.family().parts().get(spot.part()).forms().get(spot.fromForm());
    if (piece == form.pieces().size()) {
      return written(spot, new Picked(spot.part(), form, chosen), said);
    }
    if (!(form.pieces().get(piece) instanceof Slot)) {
      return pieces(spot, piece + 1, chosen, said);
    }
    for (Choice choice : choices(spot.part(), form, piece)) {
      Map<String, String> more = new LinkedHashMap<>(said);
      if (merge(more, choice.sets())) {
        List<Choice> longer = new ArrayList<>(chosen);
        longer.add(choice);
        Optional<Drawn> found = pieces(spot, piece + 1, longer, more);
        if (found.isPresent() || steps > MOST_STEPS) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  /** Goes on behind a part, and then with the same part once more where it may come again. */
  private Optional<Drawn> written(Spot spot, Picked part, Map<String, String> said) {
    boolean twice =
        picked.stream().anyMatch(p -> p.part() == part.part() && p.text().equals(part.text()));
    if (twice) {
      return Optional.empty();
    }
    picked.add(part);
    Optional<Drawn> found = part(spot.part() + 1, said);
    int written = space.family().parts().get(spot.part()).repeat() - spot.times() + 1;
    if (found.isEmpty() && spot.times() > 1 && written < MOST_REPEATS) {
      found = forms(new Spot(spot.part(), spot.fromForm(), spot.times() - 1), said);
    }
    picked.remove(picked.size() - 1);
    return found;
  }

  /** Adds what something says; false when nothing good can come of it. */
  private boolean merge(Map<String, String> said, Map<String, String> says) {
    for (Map.Entry<String, String> value : says.entrySet()) {
      String old = said.putIfAbsent(value.getKey(), value.getValue());
      if (quest.good() && old != null && !old.equals(value.getValue())) {
        return false;
      }
    }
    return !quest.good() || !hopeless(said);
  }

  private boolean hopeless(Map<String, String> said) {
    for (Clause clause : quest.holds()) {
      String value = said.getOrDefault(clause.attribute(), "");
      if (!value.isEmpty() && !clause.holds(value)) {
        return true;
      }
    }
    return space.rules().stream().anyMatch(rule -> forbids(rule, said));
  }

  /** True when what is said already is against a rule, whatever else is said. */
  private static boolean forbids(GuideRule rule, Map<String, String> said) {
    for (Clause clause : rule.when()) {
      String value = said.getOrDefault(clause.attribute(), "");
      if (value.isEmpty() || !clause.holds(value)) {
        return false;
      }
    }
    for (Clause clause : rule.what()) {
      String value = said.getOrDefault(clause.attribute(), "");
      boolean allowed = clause.holds(value) != (rule.verb() == Verb.NEVER);
      if (!value.isEmpty() && rule.verb() != Verb.DEFAULT && !allowed) {
        return true;
      }
    }
    return false;
  }
}
