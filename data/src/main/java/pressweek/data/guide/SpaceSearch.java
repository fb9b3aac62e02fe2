package pressweek.data.guide;

import java.util.ArrayList;
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
  private final List<List<Picked>> options = new ArrayList<>();
  private final List<Picked> picked = new ArrayList<>();
  private int steps;

  SpaceSearch(CodeSpace space, Quest quest) {
    this.space = space;
    this.quest = quest;
    this.sorts = space.sorts(quest.holds());
    for (int part = 0; part < space.family().parts().size(); part++) {
      options.add(options(part));
    }
  }

  Found run() {
    Optional<Drawn> found = part(0, Map.of());
    return new Found(found, found.isPresent() || steps <= MOST_STEPS);
  }

  private List<Pin> pins(int part) {
    return quest.pins().stream().filter(pin -> pin.part() == part).toList();
  }

  /** The ways to write a part once, one of each sort. */
  private List<Picked> options(int part) {
    Map<List<Map<String, String>>, Picked> options = new LinkedHashMap<>();
    List<Form> forms = space.family().parts().get(part).forms();
    List<Pin> pins = pins(part);
    for (int form = 0; form < forms.size(); form++) {
      int index = form;
      if (pins.stream().allMatch(pin -> pin.form() == index)) {
        for (List<Choice> choices : choices(forms.get(form), pins)) {
          Picked option = new Picked(part, forms.get(form), choices);
          options.putIfAbsent(sorts.of(option.says()), option);
        }
      }
    }
    return List.copyOf(options.values());
  }

  private List<List<Choice>> choices(Form form, List<Pin> pins) {
    List<List<Choice>> all = List.of(List.of());
    for (int piece = 0; piece < form.pieces().size(); piece++) {
      if (form.pieces().get(piece) instanceof Slot slot) {
        int index = piece;
        List<Choice> pinned =
            pins.stream().flatMap(pin -> Optional.ofNullable(pin.choices().get(index)).stream()).toList();
        List<Choice> here =
            pinned.isEmpty()
                ? sorts.oneOfEach(space.choices(slot.field()))
                : pinned.subList(0, 1);
        List<List<Choice>> longer = new ArrayList<>();
        for (List<Choice> before : all) {
          for (Choice choice : here) {
            List<Choice> with = new ArrayList<>(before);
            with.add(choice);
            longer.add(with);
          }
        }
        all = longer;
      }
    }
    return all;
  }

  /** Writes the parts from one on. */
  private Optional<Drawn> part(int index, Map<String, String> said) {
    if (++steps > MOST_STEPS) {
      return Optional.empty();
    }
    if (index == options.size()) {
      return Optional.of(space.drawn(picked)).filter(quest::met);
    }
    Part part = space.family().parts().get(index);
    if (part.optional() && pins(index).isEmpty()) {
      Optional<Drawn> without = part(index + 1, said);
      if (without.isPresent()) {
        return without;
      }
    }
    return again(index, 0, Math.min(part.repeat(), MOST_REPEATS), said);
  }

  /** Writes a part with one of its options from the given one on, up to so many times. */
  private Optional<Drawn> again(int index, int from, int times, Map<String, String> said) {
    for (int i = from; i < options.get(index).size(); i++) {
      Picked option = options.get(index).get(i);
      Map<String, String> more = new LinkedHashMap<>(said);
      if (merge(more, option)) {
        picked.add(option);
        Optional<Drawn> found = part(index + 1, more);
        if (found.isEmpty() && times > 1) {
          found = again(index, i + 1, times - 1, more);
        }
        picked.remove(picked.size() - 1);
        if (found.isPresent() || steps > MOST_STEPS) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  /** Adds what a part says; false when nothing good can come of it. */
  private boolean merge(Map<String, String> said, Picked option) {
    for (Map<String, String> says : option.says()) {
      for (Map.Entry<String, String> value : says.entrySet()) {
        String old = said.putIfAbsent(value.getKey(), value.getValue());
        if (quest.good() && old != null && !old.equals(value.getValue())) {
          return false;
        }
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
