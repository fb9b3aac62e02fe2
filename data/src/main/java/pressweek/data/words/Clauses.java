package pressweek.data.words;

import java.util.List;
import java.util.Map;
import pressweek.data.guide.GuideRule.Clause;

/** What the conditions of the words section ask. */
final class Clauses {
  private Clauses() {}

  /** True when a value, empty when there is none, is one of a clause. */
  static boolean holds(Clause clause, String value) {
    return clause.values().contains(value) || !value.isEmpty() && clause.values().contains("*");
  }

  /** True when all that is asked for is known. */
  static boolean hold(List<Clause> when, Map<String, String> known) {
    for (Clause clause : when) {
      if (!holds(clause, known.getOrDefault(clause.attribute(), ""))) {
        return false;
      }
    }
    return true;
  }
}
