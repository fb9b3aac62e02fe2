package pressweek.data.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.guide.FamilyReader.Placed;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.guide.GuideRule.Verb;
import pressweek.data.guide.PartMatch.Said;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Origin;

/**
 * The attributes of one item, gathered from its code and the rules, and what is wrong with them.
 */
final class RuleBook {
  private final Map<String, Attribute> attributes = new LinkedHashMap<>();
  private final List<String> faults = new ArrayList<>();

  private RuleBook() {}

  /** What a reading of a code means under the rules. */
  static Decoded decode(String code, Family family, List<GuideRule> rules, List<Placed> reading) {
    RuleBook book = new RuleBook();
    reading.forEach(book::say);
    rules.forEach(book::derive);
    rules.forEach(book::check);
    return new Decoded(code, family.name(), List.copyOf(book.attributes.values()), book.faults);
  }

  private void say(Placed placed) {
    String part = "part " + placed.place() + " \"" + placed.match().text() + "\"";
    for (Said said : placed.match().said()) {
      String because = said.words().isEmpty() ? part : part + ": " + said.words();
      set(new Attribute(said.attribute(), said.value(), Origin.CODE, because));
    }
  }

  private void derive(GuideRule rule) {
    if (!rule.applies(values())) {
      return;
    }
    for (Clause clause : rule.what()) {
      String value = clause.values().get(0);
      if (rule.verb() == Verb.THEN) {
        set(new Attribute(clause.attribute(), value, Origin.RULE, rule.reason()));
      } else if (rule.verb() == Verb.DEFAULT) {
        attributes.putIfAbsent(
            clause.attribute(),
            new Attribute(clause.attribute(), value, Origin.DEFAULT, rule.reason()));
      }
    }
  }

  private void set(Attribute attribute) {
    Attribute old = attributes.putIfAbsent(attribute.name(), attribute);
    if (old != null && !old.value().equals(attribute.value())) {
      faults.add(
          "%s is \"%s\" (%s) and \"%s\" (%s)"
              .formatted(
                  attribute.name(),
                  old.value(),
                  old.because(),
                  attribute.value(),
                  attribute.because()));
    }
  }

  private void check(GuideRule rule) {
    boolean only = rule.verb() == Verb.ONLY;
    if (!(only || rule.verb() == Verb.NEVER) || !rule.applies(values())) {
      return;
    }
    for (Clause clause : rule.what()) {
      Attribute attribute = attributes.get(clause.attribute());
      if (attribute != null && clause.holds(attribute.value()) != only) {
        String expected = only ? "; expected " + String.join("|", clause.values()) : "";
        faults.add(
            "%s \"%s\" (%s) is not possible: %s%s"
                .formatted(
                    attribute.name(),
                    attribute.value(),
                    attribute.because(),
                    rule.reason(),
                    expected));
      }
    }
  }

  private Map<String, String> values() {
    Map<String, String> values = new LinkedHashMap<>();
    attributes.forEach((name, attribute) -> values.put(name, attribute.value()));
    return values;
  }
}
