package pressweek.data.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import pressweek.data.guide.Form.Slot;
import pressweek.data.guide.GuideRule.Clause;

/**
 * Which symbols of a family are of one sort: no rule, and nothing else of interest, tells them
 * apart.
 */
final class Sorts {
  private static final String OTHER = "any other";

  private final Map<String, Set<String>> named = new HashMap<>();
  private final Set<String> saidByParts = new HashSet<>();

  /**
   * The sorts of a family.
   *
   * @param ofInterest what matters beside its rules
   * @param choices what may be written for its fields
   * @param rules its rules
   * @param family the family
   */
  Sorts(
      List<Clause> ofInterest,
      Map<Field, List<Choice>> choices,
      List<GuideRule> rules,
      Family family) {
    ofInterest.forEach(this::name);
    for (GuideRule rule : rules) {
      Stream.concat(rule.when().stream(), rule.what().stream()).forEach(this::name);
    }
    Set<String> seen = new HashSet<>();
    for (Part part : family.parts()) {
      Set<String> once = new HashSet<>();
      for (Form form : part.forms()) {
        List<String> attributes = attributes(choices, form);
        Set<String> distinct = new HashSet<>();
        attributes.stream().filter(name -> !distinct.add(name)).forEach(saidByParts::add);
        once.addAll(distinct);
      }
      once.stream()
          .filter(name -> part.repeat() > 1 || seen.contains(name))
          .forEach(saidByParts::add);
      seen.addAll(once);
    }
  }

  private void name(Clause clause) {
    named.computeIfAbsent(clause.attribute(), name -> new HashSet<>()).addAll(clause.values());
  }

  /** The attributes that a form says, those of two fields twice. */
  private static List<String> attributes(Map<Field, List<Choice>> choices, Form form) {
    List<String> attributes = new ArrayList<>(form.sets().keySet());
    for (Form.Piece piece : form.pieces()) {
      if (piece instanceof Slot slot) {
        Set<String> own = new HashSet<>();
        choices
            .getOrDefault(slot.field(), List.of())
            .forEach(choice -> own.addAll(choice.sets().keySet()));
        attributes.addAll(own);
      }
    }
    return attributes;
  }

  /** The sort of what is said. */
  List<Map<String, String>> of(List<Map<String, String>> says) {
    return says.stream().map(this::of).filter(sort -> !sort.isEmpty()).toList();
  }

  private Map<String, String> of(Map<String, String> says) {
    Map<String, String> sort = new HashMap<>();
    says.forEach(
        (name, value) -> {
          Set<String> values = named.getOrDefault(name, Set.of());
          if (value.isEmpty() || saidByParts.contains(name) || values.contains(value)) {
            sort.put(name, value);
          } else if (!values.isEmpty()) {
            sort.put(name, OTHER);
          }
        });
    return sort;
  }

  /** The first choice of each sort. */
  List<Choice> oneOfEach(List<Choice> choices) {
    Map<Map<String, String>, Choice> sorts = new LinkedHashMap<>();
    choices.forEach(choice -> sorts.putIfAbsent(of(choice.sets()), choice));
    return List.copyOf(sorts.values());
  }
}
