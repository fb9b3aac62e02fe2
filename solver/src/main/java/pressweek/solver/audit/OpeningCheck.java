package pressweek.solver.audit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Opening;

/**
 * FIGURES of opened shifts: each is an overtime shift on one of its days, and is listed once, by
 * its start.
 */
final class OpeningCheck {
  private OpeningCheck() {}

  static void check(Week week, Findings findings) {
    Set<String> mayOpen =
        week.problem().arranged().opening().overtime().stream()
            .map(Opening.Overtime::shift)
            .collect(Collectors.toSet());
    List<PlantWide.Opened> opened = week.plan().head().plantWide().opened();
    Set<PlantWide.Opened> seen = new HashSet<>();
    long last = Long.MIN_VALUE;
    boolean inOrder = true;
    for (PlantWide.Opened open : opened) {
      if (!mayOpen.contains(open.shift())) {
        tell(open, "which is not an overtime shift", week.clock(), findings);
      } else if (week.roster().overtime().stream().noneMatch(time -> Roster.means(open, time))) {
        tell(open, "which is not when it may be worked", week.clock(), findings);
      } else if (!seen.add(open)) {
        tell(open, "twice", week.clock(), findings);
      }
      inOrder &= last <= open.fromMin();
      last = open.fromMin();
    }
    if (!inOrder) {
      findings.add(Rule.FIGURES, "plan", "opened shifts are not listed by their start");
    }
  }

  private static void tell(PlantWide.Opened open, String why, Clock clock, Findings findings) {
    findings.add(
        Rule.FIGURES,
        "plan",
        "the plan opens shift %s from %s to %s, %s"
            .formatted(
                open.shift(),
                clock.text(open.fromMin()),
                clock.text(open.toMin(), open.fromMin()),
                why));
  }
}
