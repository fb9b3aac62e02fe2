package pressweek.solver.audit;

import java.util.List;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Rule;
import pressweek.data.problem.FoodUse;

/** FOOD and NEIGHBOURS: what may come after what in a barrel, and what may be on a press at all. */
final class ResinCheck {
  private ResinCheck() {}

  static void check(Week week, Findings findings) {
    for (PressWalk walk : week.walks()) {
      for (Stay stay : walk.stays()) {
        if (!stay.running()) {
          food(walk, stay, findings);
          neighbours(week, stay, findings);
        }
      }
    }
  }

  private static void food(PressWalk walk, Stay stay, Findings findings) {
    FoodUse use = walk.press().food();
    if (!stay.job().foodGrade()) {
      if (use == FoodUse.ONLY) {
        findings.add(
            Rule.FOOD, stay.run(), "is not food-grade, the press is for food-grade work only");
      }
      return;
    }
    if (use == FoodUse.NEVER) {
      findings.add(
          Rule.FOOD, stay.run(), "is food-grade, the press is never used for food-grade work");
    }
    boolean clearance = stay.run().change().kinds().contains(ChangeKind.FOOD_CLEARANCE);
    if (!stay.step().cleared() && !clearance) {
      findings.add(
          Rule.FOOD,
          stay.run(),
          "is food-grade, the press is not cleared and the change before it has no food clearance");
    }
  }

  private static void neighbours(Week week, Stay stay, Findings findings) {
    String before = stay.step().before().resin();
    String next = stay.job().resin();
    if (never(week, before, next) || never(week, next, before)) {
      findings.add(
          Rule.NEIGHBOURS,
          stay.run(),
          "brings resin %s into a barrel after %s; these two may never meet"
              .formatted(next, before));
    }
  }

  private static boolean never(Week week, String resin, String other) {
    return week.ids().resin(resin).map(row -> row.neverNextTo()).orElse(List.of()).contains(other);
  }
}
