package pressweek.solver.offer;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Rule;

/**
 * What a new line costs the plan that it is taken into.
 *
 * @param later lines that become late or later, or lose their place; empty when nobody pays
 * @param placed lines that have no place in the plan and find one
 * @param byRule what each rule charges above the plan without the line, thousandths of a cent; less
 *     than 0 where it charges less, absent where it charges as much
 * @param moved other runs that go to another press or start at another time than the plan allows
 */
public record Price(List<Later> later, List<String> placed, Map<Rule, Long> byRule, int moved) {
  public Price {
    later = List.copyOf(later);
    placed = List.copyOf(placed);
    Map<Rule, Long> charged = new EnumMap<>(Rule.class);
    charged.putAll(byRule);
    charged.values().removeIf(amount -> amount == 0);
    byRule = Collections.unmodifiableMap(charged);
  }

  /** Avoidable cost above that of the plan without the line, thousandths of a cent. */
  public long costsMore() {
    return byRule.values().stream().mapToLong(Long::longValue).sum();
  }
}
