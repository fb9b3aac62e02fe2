package pressweek.data.proof;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.Nearest;
import pressweek.data.guide.Family;
import pressweek.data.guide.Field;
import pressweek.data.guide.Form;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideRule;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.guide.Part;
import pressweek.data.guide.Values;

/** The attributes and values that codes of a guide can say. */
final class Vocabulary {
  private static final int SHOWN = 3;

  private final Map<String, Set<String>> values = new LinkedHashMap<>();
  private final Map<String, List<Field>> ranges = new LinkedHashMap<>();

  Vocabulary(Guide guide) {
    for (Field field : guide.sheet().fields()) {
      if (field instanceof Field.Table table) {
        table.entries().values().forEach(entry -> entry.sets().forEach(this::add));
      } else {
        ranges.computeIfAbsent(field.attribute(), name -> new ArrayList<>()).add(field);
        values.computeIfAbsent(field.attribute(), name -> new LinkedHashSet<>());
      }
    }
    for (Family family : guide.families()) {
      for (Part part : family.parts()) {
        for (Form form : part.forms()) {
          form.sets().forEach(this::add);
        }
      }
      for (GuideRule rule : guide.sheet().rules(family)) {
        if (rule.sets()) {
          rule.what().forEach(clause -> add(clause.attribute(), clause.values().get(0)));
        }
      }
    }
  }

  private void add(String attribute, String value) {
    values.computeIfAbsent(attribute, name -> new LinkedHashSet<>()).add(value);
  }

  /** A value as the guide's symbols say it: threads have more than one spelling. */
  String spelled(String attribute, String value) {
    return values.getOrDefault(attribute, Set.of()).stream()
        .filter(known -> Values.same(attribute, known, value))
        .findFirst()
        .orElse(value);
  }

  /** What is wrong with a value of an attribute; empty when a code can say it. */
  Optional<String> unknown(String attribute, String value) {
    Set<String> known = values.get(attribute);
    if (known == null) {
      return Optional.of(
          "nothing in a code says \"%s\"; nearest: %s"
              .formatted(
                  attribute, String.join(", ", Nearest.to(attribute, values.keySet(), SHOWN))));
    }
    boolean wild = value.isEmpty() || value.equals("*");
    if (wild || inRange(attribute, value) || known.contains(spelled(attribute, value))) {
      return Optional.empty();
    }
    String nearest = String.join(", ", Nearest.to(value, known, SHOWN));
    return Optional.of(
        "no symbol gives %s \"%s\"%s"
            .formatted(attribute, value, nearest.isEmpty() ? "" : "; nearest: " + nearest));
  }

  /** What is wrong with the values of clauses; the first fault. */
  Optional<String> unknown(List<Clause> clauses) {
    return clauses.stream()
        .flatMap(
            clause ->
                clause.values().stream()
                    .flatMap(value -> unknown(clause.attribute(), value).stream()))
        .findFirst();
  }

  private boolean inRange(String attribute, String value) {
    for (Field field : ranges.getOrDefault(attribute, List.of())) {
      if (!(field instanceof Field.Number number)) {
        return true;
      }
      if (value.matches("\\d{1,9}(\\.\\d{1,9})?") && number.canSay(new BigDecimal(value))) {
        return true;
      }
    }
    return false;
  }
}
