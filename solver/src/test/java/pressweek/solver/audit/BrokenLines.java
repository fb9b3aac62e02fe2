package pressweek.solver.audit;

import static pressweek.solver.audit.Broken.edit;
import static pressweek.solver.audit.Broken.set;
import static pressweek.solver.audit.Parts.at;

import java.util.List;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Unplaced;

/** Order lines that are missing, double or made in the wrong way. */
final class BrokenLines {
  private BrokenLines() {}

  static final List<Broken> LINES =
      List.of(
          set(
              "runs[R9].mold",
              "M4",
              Rule.ELIGIBLE,
              "uses mold M4 there; expected one of [M1 on P3]"),
          set("runs[R9].press", "P9", Rule.ELIGIBLE, "press that does not exist")
              .also(Rule.FIGURES),
          set("runs[R4].id", "R3", Rule.COMPLETE, "number of another run").also(Rule.LOTS),
          edit("runs", Edited.without(8), Rule.COMPLETE, "line F/1 is neither planned nor unplaced")
              .also(Rule.FIGURES, Rule.LOTS),
          set("runs[R9].job", "X/1", Rule.COMPLETE, "not to be planned").times(2),
          set(
                  "problem.plant.hours.endMin",
                  at("Thu 06:50"),
                  Rule.COMPLETE,
                  "starts Thu 2026-12-03 06:50, the horizon ends Thu 2026-12-03 06:50")
              .also(Rule.FIGURES),
          edit(
                  "unplaced",
                  Edited.without(1),
                  Rule.COMPLETE,
                  "line G/1 is neither planned nor unplaced")
              .also(Rule.FIGURES),
          edit(
                  "unplaced",
                  Edited.without(0),
                  Rule.COMPLETE,
                  "line H/1 fell out before planning (on hold: drawing)")
              .also(Rule.FIGURES),
          edit(
              "unplaced",
              Edited.reversed(),
              Rule.COMPLETE,
              "do not begin with those that fell out"),
          edit(
                  "unplaced",
                  Edited.with(2, new Unplaced("F", "1", "item F/1", 1000, "late", "")),
                  Rule.COMPLETE,
                  "line F/1 is in the plan 2 times (runs [R9])")
              .also(Rule.FIGURES),
          edit(
                  "unplaced",
                  Edited.with(2, new Unplaced("Z", "1", "item Z", 1, "odd", "")),
                  Rule.COMPLETE,
                  "line Z/1 is unplaced but was not to be planned")
              .also(Rule.FIGURES),
          set("unplaced[1].reason", " ", Rule.COMPLETE, "line G/1 is unplaced without a reason"),
          set("unplaced[1].pieces", 999, Rule.COMPLETE, "with 999 of item G/1; expected 1000"));
}
