package pressweek.solver.audit;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;

/**
 * A way to break {@link WeekPlan}, and what the audit says of it.
 *
 * @param name what is wrong
 * @param edit the edit of the plan (and of the problem in it, where the plan is right for another
 *     problem)
 * @param rule rule of the finding that tells it
 * @param telling part of its message
 * @param also further rules that the same edit breaks
 * @param times findings in all; not asserted when further rules are broken
 */
record Broken(
    String name, UnaryOperator<Plan> edit, Rule rule, String telling, Set<Rule> also, int times) {
  /** Sets one value: by path in the plan. */
  static Broken set(String path, Object value, Rule rule, String telling) {
    return new Broken(
        path + " = " + value, plan -> Edited.set(plan, path, value), rule, telling, Set.of(), 1);
  }

  /** Changes a value: by path in the plan. */
  static Broken edit(String path, UnaryOperator<Object> edit, Rule rule, String telling) {
    return new Broken(
        path + ": " + telling, plan -> Edited.edit(plan, path, edit), rule, telling, Set.of(), 1);
  }

  /** With a further value set. */
  Broken and(String path, Object value) {
    UnaryOperator<Plan> both = plan -> Edited.set(edit.apply(plan), path, value);
    return new Broken(name + ", " + path + " = " + value, both, rule, telling, also, times);
  }

  Broken also(Rule... rules) {
    return new Broken(name, edit, rule, telling, new TreeSet<>(Set.of(rules)), times);
  }

  Broken times(int findings) {
    return new Broken(name, edit, rule, telling, also, findings);
  }

  @Override
  public String toString() {
    return rule + ": " + name;
  }
}
