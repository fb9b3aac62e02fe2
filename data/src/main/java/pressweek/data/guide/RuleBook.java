package pressweek.data.guide;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.guide.GuideRule.Verb;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Origin;

/**
 * The attributes of one item, gathered from its code and the rules, and what is wrong with them.
 */
final class RuleBook {
  private final Map<String, Attribute> attributes = new LinkedHashMap<>();
  private final Set<String> absent = new HashSet<>();
  private final Map<String, PartMatch> saidBy = new LinkedHashMap<>();
  private final List<Fault> faults = new ArrayList<>();
  private boolean special;

  /**
   * What is wrong.
   *
   * @param attributes the attributes that it is wrong with; the first one is at fault
   * @param sentence what is wrong
   */
  record Fault(List<String> attributes, String sentence) {
    String attribute() {
      return attributes.get(0);
    }
  }

  /**
   * What a reading of a code means.
   *
   * @param attributes attributes in the order of code, rules, defaults
   * @param faults what is wrong
   * @param special true when the item has a record of its own
   * @param saidBy parts by the attributes that they set
   */
  record Meaning(
      List<Attribute> attributes,
      List<Fault> faults,
      boolean special,
      Map<String, PartMatch> saidBy) {
    Map<String, String> values() {
      Map<String, String> values = new LinkedHashMap<>();
      attributes.forEach(attribute -> values.put(attribute.name(), attribute.value()));
      return values;
    }
  }

  private RuleBook() {}

  /** What a reading of a code means under the rules. */
  static Meaning meaning(CodeText code, List<GuideRule> rules, List<PartMatch> reading) {
    RuleBook book = new RuleBook();
    for (int i = 0; i < reading.size(); i++) {
      book.say(code, i + 1, reading.get(i));
    }
    return book.close(rules);
  }

  /**
   * What follows from values alone, without a code.
   *
   * @param open attributes that may still get any value: no rule that asks for them applies yet
   */
  static Meaning of(Map<String, String> values, List<GuideRule> rules, Set<String> open) {
    return open.isEmpty()
        ? of(List.of(values), rules)
        : of(List.of(values), rules.stream().filter(rule -> !rule.asksFor(open)).toList());
  }

  /** What follows from values that several symbols say, which may contradict each other. */
  static Meaning of(List<Map<String, String>> says, List<GuideRule> rules) {
    RuleBook book = new RuleBook();
    for (Map<String, String> values : says) {
      values.forEach(
          (name, value) -> {
            if (value.isEmpty()) {
              book.absent.add(name);
            }
            book.set(new Attribute(name, value, Origin.CODE, "said"));
          });
    }
    return book.close(rules);
  }

  private Meaning close(List<GuideRule> rules) {
    UnaryOperator<String> values = this::value;
    for (GuideRule rule : rules) {
      if (rule.sets() && rule.applies(values)) {
        derive(rule);
      }
    }
    for (GuideRule rule : rules) {
      if (!rule.sets() && rule.applies(values)) {
        check(rule);
      }
    }
    return new Meaning(List.copyOf(attributes.values()), faults, special, saidBy);
  }

  private String value(String name) {
    Attribute attribute = attributes.get(name);
    return attribute == null ? "" : attribute.value();
  }

  private void say(CodeText code, int place, PartMatch match) {
    String part = "part " + place + " \"" + code.written().substring(match.start(), match.end());
    match.form().sets().forEach((name, value) -> say(match, name, value, part + '"'));
    for (Hit hit : match.hits()) {
      special |= marksSpecial(hit);
      String because = hit.words().isEmpty() ? part + '"' : part + "\": " + hit.words();
      for (Map.Entry<String, String> said : hit.sets().entrySet()) {
        say(match, said.getKey(), said.getValue(), because);
      }
    }
  }

  /** True for the mark of a special, and not for what only fills its place. */
  private static boolean marksSpecial(Hit hit) {
    return hit.field() instanceof Field.Special special
        && !hit.sets().getOrDefault(special.attribute(), "").isEmpty();
  }

  private void say(PartMatch match, String name, String value, String because) {
    if (value.isEmpty()) {
      absent.add(name);
    }
    saidBy.put(name, match);
    set(new Attribute(name, value, Origin.CODE, because));
  }

  private void derive(GuideRule rule) {
    for (Clause clause : rule.what()) {
      String name = clause.attribute();
      String value = clause.values().get(0);
      if (rule.verb() == Verb.THEN) {
        set(new Attribute(name, value, Origin.RULE, rule.reason()));
      } else if (!absent.contains(name) && !attributes.containsKey(name)) {
        attributes.put(name, new Attribute(name, value, Origin.DEFAULT, rule.reason()));
      }
    }
  }

  private void set(Attribute attribute) {
    String name = attribute.name();
    if (attribute.value().isEmpty() || absent.contains(name)) {
      if (attributes.containsKey(name) || !attribute.value().isEmpty()) {
        String said = attribute.value().isEmpty() ? value(name) : attribute.value();
        faults.add(
            new Fault(
                List.of(name),
                name
                    + " is \""
                    + said
                    + "\" and also said not to apply ("
                    + attribute.because()
                    + ")"));
      }
      return;
    }
    Attribute old = attributes.putIfAbsent(name, attribute);
    if (old != null && !old.value().equals(attribute.value())) {
      faults.add(
          new Fault(List.of(name), name + " is " + reasoned(old) + " and " + reasoned(attribute)));
    }
  }

  private static String reasoned(Attribute attribute) {
    return "\"" + attribute.value() + "\" (" + attribute.because() + ")";
  }

  private void check(GuideRule rule) {
    boolean only = rule.verb() == Verb.ONLY;
    for (Clause clause : rule.what()) {
      String name = clause.attribute();
      Attribute attribute = attributes.get(name);
      if (attribute == null) {
        if (!only && clause.values().contains("")) {
          faults.add(new Fault(concerned(name, rule), name + " is missing: " + rule.reason()));
        }
      } else if (clause.holds(attribute.value()) != only) {
        String expected = only ? "; expected " + String.join("|", clause.values()) : "";
        faults.add(
            new Fault(
                concerned(name, rule),
                name
                    + " "
                    + reasoned(attribute)
                    + " is not possible: "
                    + rule.reason()
                    + expected));
      }
    }
  }

  /** The attribute at fault, and those for which the rule asks. */
  private static List<String> concerned(String name, GuideRule rule) {
    List<String> names = new ArrayList<>(List.of(name));
    rule.when().forEach(clause -> names.add(clause.attribute()));
    return names;
  }
}
