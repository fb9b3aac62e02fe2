package pressweek.data.guide;

import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A rule of a guide.
 *
 * @param when what must hold of the item; empty for always
 * @param verb what the rule does
 * @param what the attributes that it speaks of
 * @param because the reason that people read; may be empty
 * @param line line of the guide
 */
public record GuideRule(List<Clause> when, Verb verb, List<Clause> what, String because, int line) {
  public GuideRule {
    when = List.copyOf(when);
    what = List.copyOf(what);
  }

  /** What a rule does. */
  public enum Verb {
    /** Sets an attribute; a code that says otherwise is in error. */
    THEN("then"),
    /** Sets an attribute where nothing has been said. */
    DEFAULT("default"),
    /** An attribute that the item has is one of these. */
    ONLY("only"),
    /** An attribute is none of these. */
    NEVER("never");

    private final String key;

    Verb(String key) {
      this.key = key;
    }

    /** The key in the guide. */
    public String key() {
      return key;
    }
  }

  /**
   * An attribute and values.
   *
   * @param attribute attribute
   * @param values values; {@code *} is any value, an empty text a missing attribute
   */
  public record Clause(String attribute, List<String> values) {
    public Clause {
      values = List.copyOf(values);
    }

    /** True when the attribute, empty when it is missing, is one of the values. */
    public boolean holds(String value) {
      return values.contains(value) || !value.isEmpty() && values.contains("*");
    }

    @Override
    public String toString() {
      return attribute + " " + String.join("|", values);
    }
  }

  /** True when all that the rule asks for holds; an attribute that an item lacks is empty. */
  public boolean applies(UnaryOperator<String> item) {
    for (Clause clause : when) {
      if (!clause.holds(item.apply(clause.attribute()))) {
        return false;
      }
    }
    return true;
  }

  /** True when it depends on one of the attributes. */
  boolean asksFor(Set<String> attributes) {
    return when.stream().anyMatch(clause -> attributes.contains(clause.attribute()));
  }

  /** True when it sets attributes, false when it forbids. */
  public boolean sets() {
    return verb == Verb.THEN || verb == Verb.DEFAULT;
  }

  /** The reason that people read; what the rule asks for when it gives none. */
  public String reason() {
    if (!because.isEmpty()) {
      return because;
    }
    if (when.isEmpty()) {
      return "always so";
    }
    return "for " + String.join(", ", when.stream().map(Clause::toString).toList());
  }
}
