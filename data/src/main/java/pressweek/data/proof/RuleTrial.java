package pressweek.data.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Family;
import pressweek.data.guide.GuideRule;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.guide.GuideRule.Verb;
import pressweek.data.guide.Quest;

/**
 * Looks for rules that never apply, that change nothing, or that contradict another rule. A rule
 * changes something when a code means something else, or is refused for something else, without it.
 */
final class RuleTrial {
  private final Bench bench;
  private final Vocabulary vocabulary;

  RuleTrial(Bench bench, Vocabulary vocabulary) {
    this.bench = bench;
    this.vocabulary = vocabulary;
  }

  void run() {
    List<Family> all = bench.guide().families();
    bench.guide().sheet().rules().forEach(rule -> rule(all, rule));
    for (Family family : all) {
      family.rules().forEach(rule -> rule(List.of(family), rule));
      contradictions(family);
    }
  }

  private void rule(List<Family> families, GuideRule rule) {
    Optional<String> unknown =
        vocabulary.unknown(Stream.concat(rule.when().stream(), rule.what().stream()).toList());
    if (unknown.isPresent()) {
      bench.warning(rule.line(), words(rule) + ": " + unknown.get());
    } else if (!changesSomething(families, rule)) {
      idle(families, rule);
    } else if (rule.verb() == Verb.THEN) {
      alwaysRefused(families, rule);
    }
  }

  private boolean changesSomething(List<Family> families, GuideRule rule) {
    for (Family family : families) {
      List<GuideRule> others = without(family, rule);
      boolean found =
          Stream.concat(bench.good(family).stream(), bench.loose(family).stream())
              .anyMatch(drawn -> differs(drawn, others));
      if (found) {
        return true;
      }
    }
    for (Family family : families) {
      List<GuideRule> others = without(family, rule);
      Quest quest = new Quest(List.of(), List.of(), false, drawn -> differs(drawn, others));
      if (!bench.find(List.of(family), quest).none()) {
        return true;
      }
    }
    return false;
  }

  private static boolean differs(Drawn drawn, List<GuideRule> others) {
    Drawn without = drawn.under(others);
    return !without.values().equals(drawn.values()) || !without.faults().equals(drawn.faults());
  }

  private List<GuideRule> without(Family family, GuideRule rule) {
    return bench.space(family).rules().stream().filter(other -> other != rule).toList();
  }

  private static boolean applies(GuideRule rule, Drawn drawn) {
    return rule.applies(name -> drawn.values().getOrDefault(name, ""));
  }

  /** A rule that changes nothing: since it never applies, or since it says nothing new. */
  private void idle(List<Family> families, GuideRule rule) {
    Quest applied = new Quest(List.of(), List.of(), false, drawn -> applies(rule, drawn));
    if (bench.find(families, applied).none()) {
      bench.warning(rule.line(), words(rule) + " never applies: no item has " + conditions(rule));
      return;
    }
    bench.note(
        rule.line(),
        words(rule)
            + switch (rule.verb()) {
              case THEN -> " says nothing that is not said already";
              case DEFAULT -> " is never used: the attribute is always said";
              case ONLY, NEVER -> " forbids nothing that a code could say";
            });
  }

  /** A rule that only ever contradicts what the code says. */
  private void alwaysRefused(List<Family> families, GuideRule rule) {
    boolean fine =
        families.stream()
            .flatMap(family -> bench.good(family).stream())
            .anyMatch(drawn -> applies(rule, drawn));
    Quest quest = new Quest(List.of(), List.of(), true, drawn -> applies(rule, drawn));
    if (!fine && bench.find(families, quest).none()) {
      Quest any = new Quest(List.of(), List.of(), false, drawn -> applies(rule, drawn));
      String example =
          bench.find(families, any).drawn().map(drawn -> fault(drawn)).orElse("no good code");
      bench.warning(
          rule.line(), words(rule) + " refuses every item to which it applies: " + example);
    }
  }

  private String fault(Drawn drawn) {
    List<String> faults = bench.guide().decode(drawn.code()).faults();
    return faults.isEmpty() ? "code " + drawn.code() : faults.get(0);
  }

  private void contradictions(Family family) {
    List<GuideRule> setting =
        bench.space(family).rules().stream().filter(rule -> rule.verb() == Verb.THEN).toList();
    for (int i = 0; i < setting.size(); i++) {
      for (int j = i + 1; j < setting.size(); j++) {
        if (contradict(setting.get(i), setting.get(j)) && mayMeet(setting.get(i), setting.get(j))) {
          meet(family, setting.get(i), setting.get(j));
        }
      }
    }
  }

  private static boolean contradict(GuideRule one, GuideRule other) {
    for (Clause a : one.what()) {
      for (Clause b : other.what()) {
        if (a.attribute().equals(b.attribute()) && !a.values().equals(b.values())) {
          return true;
        }
      }
    }
    return false;
  }

  /** False when the conditions exclude each other. */
  private static boolean mayMeet(GuideRule one, GuideRule other) {
    for (Clause a : one.when()) {
      for (Clause b : other.when()) {
        boolean wild = a.values().contains("*") || b.values().contains("*");
        if (a.attribute().equals(b.attribute())
            && !wild
            && Collections.disjoint(Set.copyOf(a.values()), Set.copyOf(b.values()))) {
          return false;
        }
      }
    }
    return true;
  }

  /** Tells when two rules apply to an item with which nothing else is wrong. */
  private void meet(Family family, GuideRule one, GuideRule other) {
    List<GuideRule> others = without(family, other);
    Quest both =
        new Quest(
            List.of(),
            List.of(),
            false,
            drawn ->
                !drawn.good()
                    && applies(one, drawn)
                    && applies(other, drawn)
                    && drawn.under(others).good());
    bench
        .find(List.of(family), both)
        .drawn()
        .ifPresent(
            drawn -> {
              int later = Math.max(one.line(), other.line());
              int earlier = Math.min(one.line(), other.line());
              bench.warning(
                  later,
                  "the rule contradicts the rule in line %d where both apply: %s"
                      .formatted(earlier, fault(drawn)));
            });
  }

  private static String words(GuideRule rule) {
    String what = String.join(", ", rule.what().stream().map(Clause::toString).toList());
    return "the rule (" + rule.verb().key() + " " + what + ")";
  }

  private static String conditions(GuideRule rule) {
    List<String> words = new ArrayList<>();
    for (Clause clause : rule.when()) {
      words.add(
          clause.values().equals(List.of("")) ? "no " + clause.attribute() : clause.toString());
    }
    return String.join(" with ", words);
  }
}
