package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.guide.Family;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideRule;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.guide.GuideRule.Verb;

/** The rules of a guide in plain sentences. */
final class RuleSentences {
  private final Guide guide;
  private final Phrasebook words;

  RuleSentences(Guide guide, Phrasebook words) {
    this.guide = guide;
    this.words = words;
  }

  /**
   * A rule in words.
   *
   * @param sentence what it says
   * @param because why; may be empty
   * @param family the kind of item for which alone it holds; empty for all, and when the sentence
   *     says it
   */
  record Said(String sentence, String because, String family) {}

  /** The rules that exclude something or make something follow. */
  List<Said> rules() {
    return all(false);
  }

  /** What holds where a code says nothing. */
  List<Said> defaults() {
    return all(true);
  }

  private List<Said> all(boolean defaults) {
    List<Said> said = new ArrayList<>();
    for (GuideRule rule : guide.sheet().rules()) {
      if ((rule.verb() == Verb.DEFAULT) == defaults) {
        said.add(new Said(sentence(rule, "every item"), rule.because(), ""));
      }
    }
    boolean many = guide.families().size() > 1;
    for (Family family : guide.families()) {
      for (GuideRule rule : family.rules()) {
        if ((rule.verb() == Verb.DEFAULT) == defaults) {
          String scope = rule.when().isEmpty() || !many ? "" : family.name();
          said.add(new Said(sentence(rule, article(family.name())), rule.because(), scope));
        }
      }
    }
    return said;
  }

  private String sentence(GuideRule rule, String everything) {
    String subject = rule.when().isEmpty() ? everything : subject(rule.when());
    List<String> what = new ArrayList<>();
    for (Clause clause : rule.what()) {
      what.add(predicate(rule.verb(), clause));
    }
    if (rule.verb() == Verb.DEFAULT) {
      String given = rule.when().isEmpty() && everything.equals("every item") ? "" : subject + ": ";
      return Phrasebook.capital(given + String.join(", ", what));
    }
    String verb =
        switch (rule.verb()) {
          case THEN -> " means ";
          case ONLY -> " takes only ";
          default -> " ";
        };
    return Phrasebook.capital(subject + verb + String.join(" and ", what));
  }

  private String predicate(Verb verb, Clause clause) {
    if (verb != Verb.NEVER) {
      return named(clause);
    }
    if (clause.values().contains("")) {
      return "must have " + article(words.attribute(clause.attribute()));
    }
    return clause.values().contains("*")
        ? "has no " + words.attribute(clause.attribute())
        : "takes no " + values(clause);
  }

  /** What has all of this. */
  String subject(List<Clause> when) {
    List<String> parts = new ArrayList<>();
    for (Clause clause : when) {
      String attribute = words.attribute(clause.attribute());
      if (clause.values().equals(List.of(""))) {
        parts.add(parts.isEmpty() ? "an item without " + attribute : "without " + attribute);
      } else if (clause.values().contains("*")) {
        parts.add(
            parts.isEmpty() ? "an item with " + article(attribute) : "with " + article(attribute));
      } else {
        parts.add((parts.isEmpty() ? "" : "with ") + named(clause));
      }
    }
    return String.join(" ", parts);
  }

  private String values(Clause clause) {
    return words.values(clause.attribute(), clause.values());
  }

  /** The values; things that can be counted with their article. */
  private String named(Clause clause) {
    String attribute = clause.attribute();
    boolean counted = attribute.endsWith("_style") || attribute.endsWith("_kind");
    return counted ? article(values(clause)) : values(clause);
  }

  private static String article(String words) {
    boolean vowel = !words.isEmpty() && "aeiouAEIOU".indexOf(words.charAt(0)) >= 0;
    return (vowel ? "an " : "a ") + words;
  }
}
