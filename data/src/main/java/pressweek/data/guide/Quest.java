package pressweek.data.guide;

import java.util.List;
import java.util.function.Predicate;
import pressweek.data.guide.GuideRule.Clause;

/**
 * What is sought among the codes of a family.
 *
 * @param pins symbols that must stand in the code
 * @param holds what must hold of its attributes under the rules
 * @param good true when the rules must allow it
 * @param test what else must hold; it may look at nothing but attributes of which the rules or
 *     {@code holds} speak, and at faults
 */
public record Quest(List<Pin> pins, List<Clause> holds, boolean good, Predicate<Drawn> test) {
  public Quest {
    pins = List.copyOf(pins);
    holds = List.copyOf(holds);
  }

  /** The code of an item with these symbols. */
  public static Quest goodWith(List<Pin> pins) {
    return new Quest(pins, List.of(), true, drawn -> true);
  }

  /** The code of an item of which this holds. */
  public static Quest goodWhere(List<Clause> holds) {
    return new Quest(List.of(), holds, true, drawn -> true);
  }

  boolean met(Drawn drawn) {
    return (!good || drawn.good())
        && holds.stream()
            .allMatch(clause -> clause.holds(drawn.values().getOrDefault(clause.attribute(), "")))
        && test.test(drawn);
  }
}
