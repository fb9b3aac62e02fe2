package pressweek.data.plan;

import java.util.Map;

/**
 * What a plan amounts to.
 *
 * @param placedLines order lines in the plan
 * @param unplacedLines order lines that are not, whatever the reason
 * @param lateLines placed lines that are ready after their due time
 * @param lateMin minutes late, summed over the late lines
 * @param changes changes that exchange something, and dismounts
 * @param changeMin minutes of changes and dismounts
 * @param purgeG grams purged
 * @param costByRule thousandths of a cent by cost rule; a rule without charge is absent
 */
public record Figures(
    int placedLines,
    int unplacedLines,
    int lateLines,
    long lateMin,
    int changes,
    long changeMin,
    long purgeG,
    Map<Rule, Long> costByRule) {
  public Figures {
    costByRule = Map.copyOf(costByRule);
  }

  /** Avoidable cost: the sum over all cost rules, thousandths of a cent. */
  public long avoidableCost() {
    return costByRule.values().stream().mapToLong(Long::longValue).sum();
  }
}
