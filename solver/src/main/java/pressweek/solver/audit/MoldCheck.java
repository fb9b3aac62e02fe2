package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Rule;

/** MOLD_ONCE and MOLD_AWAY: a mold is in one place at a time and not used while it is away. */
final class MoldCheck {
  private MoldCheck() {}

  static void check(Week week, Findings findings) {
    Map<String, List<Hold>> holds = new LinkedHashMap<>();
    for (PressWalk walk : week.walks()) {
      walk.holds()
          .forEach(hold -> holds.computeIfAbsent(hold.mold(), id -> new ArrayList<>()).add(hold));
      for (Dismount off : walk.strayDismounts()) {
        findings.add(
            Rule.MOLD_ONCE,
            off.press(),
            "%s starts %s, the press does not hold that mold then"
                .formatted(Words.of(off), week.clock().text(off.startMin())));
      }
    }
    holds.values().forEach(ofOneMold -> once(ofOneMold, week.clock(), findings));
    Map<String, List<MoldAway>> away = MoldAway.byMold(week.problem());
    week.steps().forEach(step -> away(step, away, week.clock(), findings));
  }

  private static void once(List<Hold> holds, Clock clock, Findings findings) {
    List<Hold> inOrder = new ArrayList<>(holds);
    inOrder.sort(Comparator.comparingLong(Hold::fromMin));
    Hold before = inOrder.get(0);
    for (Hold hold : inOrder.subList(1, inOrder.size())) {
      if (hold.fromMin() < before.toMin() && !hold.run().isEmpty()) {
        String still =
            before.toMin() == Long.MAX_VALUE
                ? "and nothing takes it off"
                : "until " + clock.text(before.toMin(), hold.fromMin());
        findings.add(
            Rule.MOLD_ONCE,
            hold.run(),
            "%s begins %s, mold %s is still on %s %s"
                .formatted(
                    hold.words(), clock.text(hold.fromMin()), hold.mold(), before.press(), still));
      }
      if (hold.toMin() >= before.toMin()) {
        before = hold;
      }
    }
  }

  private static void away(
      Step step, Map<String, List<MoldAway>> away, Clock clock, Findings findings) {
    boolean mounts = !step.before().mold().equals(step.run().mold());
    for (MoldAway time : away.getOrDefault(step.run().mold(), List.of())) {
      if (step.runSpan().overlaps(time.span())
          || mounts && step.changeSpan().overlaps(time.span())) {
        long begins = mounts ? step.run().change().startMin() : step.run().startMin();
        findings.add(
            Rule.MOLD_AWAY,
            step.run(),
            "is from %s to %s, mold %s is away until %s (%s)"
                .formatted(
                    clock.text(begins),
                    clock.text(step.run().endMin(), begins),
                    step.run().mold(),
                    clock.text(time.span().toMin(), begins),
                    time.reason()));
      }
    }
  }
}
