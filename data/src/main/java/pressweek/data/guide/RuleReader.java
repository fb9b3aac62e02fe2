package pressweek.data.guide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.files.JsonTree;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.guide.GuideRule.Verb;

/** Reads a key {@code rules} of a guide or of one of its families. */
final class RuleReader {
  private static final Set<String> KEYS =
      Set.of("when", "then", "default", "only", "never", "because");

  private final JsonNotes notes;

  RuleReader(JsonNotes notes) {
    this.notes = notes;
  }

  /** The rules of an object that may have a key {@code rules}. */
  List<GuideRule> read(JsonTree.Obj parent) {
    List<GuideRule> rules = new ArrayList<>();
    for (JsonTree value : notes.list(parent, "rules")) {
      notes.object(value, "rules").flatMap(this::rule).ifPresent(rules::add);
    }
    return rules;
  }

  private Optional<GuideRule> rule(JsonTree.Obj object) {
    notes.onlyKeys(object, KEYS);
    List<Verb> verbs =
        Arrays.stream(Verb.values()).filter(verb -> object.field(verb.key()).isPresent()).toList();
    if (verbs.size() != 1) {
      notes.error(
          object.line(),
          "rules",
          "a rule with " + verbs.size() + " of then, default, only, never; expected exactly one");
      return Optional.empty();
    }
    Verb verb = verbs.get(0);
    List<Clause> what = clauses(object, verb.key());
    if (what.isEmpty()) {
      notes.error(
          object.line(), verb.key(), "an empty \"" + verb.key() + "\"; expected attributes");
      return Optional.empty();
    }
    boolean sets = verb == Verb.THEN || verb == Verb.DEFAULT;
    for (Clause clause : what) {
      String value = clause.values().get(0);
      if (sets && (clause.values().size() != 1 || value.isEmpty() || value.equals("*"))) {
        notes.error(
            object.line(),
            verb.key(),
            "\"" + clause + "\" in a " + verb.key() + "; expected one value");
      }
    }
    return Optional.of(
        new GuideRule(
            clauses(object, "when"), verb, what, notes.text(object, "because"), object.line()));
  }

  /** Attributes and the values asked for. */
  List<Clause> clauses(JsonTree.Obj parent, String key) {
    List<Clause> clauses = new ArrayList<>();
    notes
        .texts(notes.object(parent, key))
        .forEach(
            (attribute, values) ->
                clauses.add(
                    new Clause(
                        attribute,
                        Arrays.stream(values.split("\\|", -1)).map(String::strip).toList())));
    return clauses;
  }
}
