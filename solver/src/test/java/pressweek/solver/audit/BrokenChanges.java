package pressweek.solver.audit;

import static pressweek.solver.audit.Broken.edit;
import static pressweek.solver.audit.Broken.set;
import static pressweek.solver.audit.Parts.at;

import java.util.List;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Rule;

/** Changes that are not what the table asks for, and crews too small for them. */
final class BrokenChanges {
  private BrokenChanges() {}

  static final List<Broken> CHANGES =
      List.of(
          set(
                  "runs[R9].change.minutes",
                  49,
                  Rule.CHANGE_TIME,
                  "has a change of 49 min; expected 50 min for [COLOUR]")
              .also(Rule.PRESS_HOURS),
          set("runs[R2].change.purgeG", 481, Rule.CHANGE_TIME, "purges 481 g; expected 480 g"),
          set(
              "runs[R3].change.kinds",
              List.of(ChangeKind.MOLD, ChangeKind.RESIN, ChangeKind.FOOD_CLEARANCE),
              Rule.CHANGE_TIME,
              "expected [MOLD, RESIN, COLOUR, FOOD_CLEARANCE]"),
          set(
              "runs[R4].change.kinds",
              List.of(ChangeKind.FOOD_CLEARANCE),
              Rule.CHANGE_TIME,
              "has a change of [FOOD_CLEARANCE]; expected []"),
          set(
              "runs[R5].change.from.colour",
              "BK",
              Rule.CHANGE_TIME,
              "changes from mold M4, tooling none, resin ABS, colour BK; the press holds mold M4, tooling none, resin ABS, colour RD"),
          set("runs[R8].change.from.mold", "M3", Rule.CHANGE_TIME, "the press holds mold none"),
          set(
              "runs[R2].change.to.tooling",
              "T8",
              Rule.CHANGE_TIME,
              "it needs mold M1, tooling T10"),
          set("dismounts[0].minutes", 17, Rule.CHANGE_TIME, "has 17 min; expected 18 min")
              .also(Rule.PRESS_HOURS),
          edit(
                  "problem.floor.recordedChanges",
                  Edited.without(1),
                  Rule.CHANGE_TIME,
                  "expected 99 min for [RESIN, COLOUR]")
              .also(Rule.FIGURES));

  static final List<Broken> CREW =
      List.of(
          set(
                  "dismounts[0].startMin",
                  at("Mon 09:42"),
                  Rule.SETTERS,
                  "starts Mon 2026-11-30 09:42; at 09:42 it is one of 2 that take a setter, there are 1")
              .and("dismounts[0].endMin", at("Mon 10:00")),
          set("problem.plant.crew.setterSharePct", 79, Rule.SETTERS, "one of 2 that take a setter")
              .times(3),
          set(
                  "problem.plant.hours.shifts[late].setters",
                  0,
                  Rule.SETTERS,
                  "the change before run R7 (D/1) on P2 from Mon 2026-11-30 17:01 to 17:31 is not within shifts that have a setter")
              .times(3),
          set(
              "problem.plant.hours.shifts[early].operatorThousandths",
              1999,
              Rule.OPERATORS,
              "run R8 (E/1) on P3 starts Tue 2026-12-01 06:56; at 06:56 runs need 2.000 operators, there are 1.999"),
          set(
                  "problem.plant.hours.shifts[late].operatorThousandths",
                  999,
                  Rule.OPERATORS,
                  "runs need 1.000 operators, there are 0.999")
              .times(2));
}
