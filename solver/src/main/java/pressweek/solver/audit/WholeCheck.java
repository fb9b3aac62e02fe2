package pressweek.solver.audit;

import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Bound;
import pressweek.data.plan.Charge;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;

/** FIGURES of the plant as a whole: charges that belong to no run, and the proved bound. */
final class WholeCheck {
  private WholeCheck() {}

  static void check(Week week, Findings findings) {
    PlantWide whole = week.plan().head().plantWide();
    // What runs that cannot be made out are charged would say nothing.
    if (week.stays().size() == week.plan().runs().size()) {
      charges(whole.charges(), WholeCharge.due(week), findings);
    }
    whole.bound().ifPresent(bound -> bound(bound, week.plan().figures().avoidableCost(), findings));
  }

  /** Only the first charge that is wrong is told: all after it may merely stand elsewhere. */
  private static void charges(List<Charge> said, List<WholeCharge> due, Findings findings) {
    for (int i = 0; i < Math.max(said.size(), due.size()); i++) {
      Optional<WholeCharge> seen =
          said.stream().skip(i).findFirst().map(c -> new WholeCharge(c.rule(), c.amount()));
      Optional<WholeCharge> expected = due.stream().skip(i).findFirst();
      if (!seen.equals(expected)) {
        findings.add(
            Rule.FIGURES,
            "plan",
            "charge %d of the plant as a whole is %s; expected %s"
                .formatted(i + 1, words(seen), words(expected)));
        return;
      }
    }
  }

  private static String words(Optional<WholeCharge> charge) {
    return charge.map(c -> Words.money(c.amount()) + " by " + c.rule()).orElse("none");
  }

  private static void bound(Bound bound, long cost, Findings findings) {
    long parts = bound.parts().stream().mapToLong(Bound.Part::amount).sum();
    if (bound.amount() < 0) {
      tell("is %s; expected no less than nothing", findings, bound.amount());
    }
    if (parts != bound.amount()) {
      tell("is %s; its parts come to %s", findings, bound.amount(), parts);
    }
    if (cost < bound.amount()) {
      tell("is %s; the plan itself costs only %s", findings, bound.amount(), cost);
    }
  }

  private static void tell(String what, Findings findings, Long... amounts) {
    Object[] money = List.of(amounts).stream().map(Words::money).toArray();
    findings.add(Rule.FIGURES, "plan", "the proved bound " + what.formatted(money));
  }
}
