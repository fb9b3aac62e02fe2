package pressweek.solver.audit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import pressweek.data.plan.Rule;

/** OPERATORS: no more hand loading at once than operators. */
final class OperatorCheck {
  private OperatorCheck() {}

  static void check(Week week, Findings findings) {
    if (!week.problem().plant().crew().operatorsChecked()) {
      return;
    }
    List<Work> works = new ArrayList<>();
    for (PressWalk walk : week.walks()) {
      for (Stay stay : walk.stays()) {
        if (thousandths(stay) > 0) {
          works.add(
              new Work(
                  stay.step().runSpan(),
                  walk.time().working(),
                  stay.run().id(),
                  Words.of(stay.run())));
        }
      }
    }
    Balance operators = balance(week, stay -> true);
    for (Work.Overload overload : Work.overloads(works, operators.lessThan(0))) {
      Work last = overload.last();
      findings.add(
          Rule.OPERATORS,
          last.subject(),
          "%s starts %s; at %s runs need %s operators, there are %s"
              .formatted(
                  last.words(),
                  week.clock().text(last.span().fromMin()),
                  week.clock().text(overload.shortage().span().fromMin(), last.span().fromMin()),
                  people(overload.shortage().taken()),
                  people(overload.shortage().there())));
    }
  }

  /**
   * Operators in the house, less those of the given runs while their presses work, thousandths of a
   * person.
   */
  static Balance balance(Week week, Predicate<Stay> counted) {
    Balance operators = new Balance();
    week.shifts()
        .forEach(shift -> operators.add(shift.span(), shift.shift().operatorThousandths()));
    for (PressWalk walk : week.walks()) {
      for (Stay stay : walk.stays()) {
        if (counted.test(stay)) {
          walk.time()
              .working()
              .within(stay.step().runSpan())
              .forEach(span -> operators.take(span, thousandths(stay)));
        }
      }
    }
    return operators;
  }

  static long thousandths(Stay stay) {
    return stay.option().pace().operatorThousandths();
  }

  private static String people(long thousandths) {
    return BigDecimal.valueOf(thousandths, 3).toPlainString();
  }
}
